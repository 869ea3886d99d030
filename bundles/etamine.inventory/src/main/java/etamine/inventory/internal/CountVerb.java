package etamine.inventory.internal;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.inventory.Movement;
import etamine.inventory.RefusedException;
import etamine.inventory.Stockroom;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code count}: sets levels to what a table of counts says. */
@Component
public final class CountVerb implements Verb {
    private static final long LARGEST = 20_000_000;

    private final Stockroom stockroom;
    private final KnownItems items;
    private final PlaceShelf places;

    /** Counts into that stockroom. */
    @Activate
    public CountVerb(@Reference Stockroom stockroom, @Reference KnownItems items, @Reference PlaceShelf places) {
        this.stockroom = stockroom;
        this.items = items;
        this.places = places;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("count", "Set stock to what was counted: item;place;quantity[;useBy;lot].", "FILE.csv");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().isEmpty()) {
            throw VerbException.wrongCall("Name the file with the count.");
        }
        CountFile file = CountFile.read(
                bytes(call.file(call.arguments().get(0))), id -> !id.isEmpty() && !items.refuses(id), this::known);
        if (!file.faults().isEmpty()) {
            throw VerbException.rejected(String.join("\n", file.faults()));
        }
        try {
            List<Movement> movements = stockroom.count(file.lines());
            return MovementReport.of(movements, items, List.of());
        } catch (RefusedException refused) {
            throw VerbException.rejected(refused.getMessage());
        }
    }

    /** A place may stay empty only where there is nothing to choose from. */
    private boolean known(String place) {
        return place.isEmpty() ? places.all().size() <= 1 : places.all().containsKey(place);
    }

    private static byte[] bytes(Path file) throws VerbException {
        try {
            if (Files.size(file) > LARGEST) {
                throw VerbException.rejected("The file " + file + " is too large to be a count.");
            }
            return Files.readAllBytes(file);
        } catch (IOException unreadable) {
            throw VerbException.rejected("The file " + file + " cannot be read; look at its name and place.");
        }
    }
}
