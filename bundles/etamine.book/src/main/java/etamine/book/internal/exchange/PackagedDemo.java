package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Progress;
import etamine.kitchen.exchange.LoadResult;
import etamine.kitchen.house.DemoKitchen;
import etamine.kitchen.house.Kitchen;
import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/**
 * The demo kitchen that is packed into this bundle, or the one that the framework property {@code etamine.demo.file}
 * names. Its member {@code demo} says which day it was made for; its dates move into the present week.
 */
@Component
public final class PackagedDemo implements DemoKitchen {
    static final String FILE = "etamine.demo.file";
    private static final String RESOURCE = "/demo/ninth-lantern.json";
    private static final String NAME = "the demo kitchen";

    private final Optional<Path> file;

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<BookExchange> exchanges = List.of();

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<Kitchen> kitchens = List.of();

    /** The demo of this program. */
    @Activate
    public PackagedDemo(BundleContext context) {
        this(Optional.ofNullable(context.getProperty(FILE)).map(Path::of));
    }

    private PackagedDemo(Optional<Path> file) {
        this.file = file;
    }

    PackagedDemo(Path file, BookExchange exchange, Kitchen kitchen) {
        this(Optional.of(file));
        this.exchanges = List.of(exchange);
        this.kitchens = List.of(kitchen);
    }

    @Override
    public void into(Book book) {
        BookExchange exchange = exchanges.stream()
                .filter(each -> each.serves(book))
                .findFirst()
                .orElseThrow(() -> failure("Only the open book can take " + NAME + "; open it first."));
        if (!exchange.empty()) {
            throw failure("This book has a kitchen's data already; make a new book for " + NAME + ".");
        }
        ObjectNode form = form();
        LocalDate today = LocalDate.ofInstant(kitchens.get(0).clock().instant(), zone(form));
        move(form, today);
        LoadResult result = exchange.load(NAME, form, Progress.unseen());
        if (!result.written()) {
            LoadResult.Rejected first = result.rejected().get(0);
            throw failure("This program does not accept its own demo ("
                    + result.rejected().size() + " problems; first at " + first.pointer() + ": " + first.problem()
                    + ") Install it again.");
        }
    }

    /** Moves the form's dates into the week of {@code today} and takes the member {@code demo} out. */
    static void move(ObjectNode form, LocalDate today) {
        JsonNode made = form.path("demo").path("today");
        form.remove("demo");
        if (made.isTextual()) {
            new ShiftedDates(LocalDate.parse(made.asText()), today, zone(form)).shift(form);
        }
    }

    private static ZoneId zone(ObjectNode form) {
        try {
            return ZoneId.of(form.path("kitchen").path("zone").asText());
        } catch (DateTimeException e) {
            return ZoneId.systemDefault(); // the section's own check reports it
        }
    }

    private ObjectNode form() {
        try {
            return SourceReader.parse(bytes());
        } catch (IOException | RefusedFile e) {
            throw failure("The demo kitchen cannot be read: " + e.getMessage());
        }
    }

    private byte[] bytes() throws IOException {
        if (file.isPresent()) {
            return Files.readAllBytes(file.get());
        }
        try (InputStream in = PackagedDemo.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw failure("This program came without the demo kitchen; name one with -D" + FILE + "=FILE.");
            }
            return in.readAllBytes();
        }
    }

    private static BookException failure(String text) {
        return new BookException(Reason.OTHER, text);
    }
}
