package etamine.recipes.internal.linked;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.recipes.FoundRecipes;
import etamine.recipes.FoundRecipes.Found;
import etamine.recipes.FoundRecipes.Presence;
import etamine.recipes.RecipeFiles;
import etamine.recipes.RecipeFiles.Taken;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Takes recipes from a file of another program into the book: {@code recipes-import FILE}. */
@Component
public final class ImportVerb implements Verb {
    private final RecipeFiles files;

    /** Reads with that. */
    @Activate
    public ImportVerb(@Reference RecipeFiles files) {
        this.files = files;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("recipes-import", "recipes from a file of schema.org JSON-LD or a saved page", "FILE")
                .with("--preview", "", "only say what would become of it")
                .with("--new-ingredients", "", "add the ingredients that the book does not have")
                .with("--accept-good", "", "take the recipes that are wholly understood and leave the others")
                .with("--with-gaps", "", "take all; what is not understood stands in the notes");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().size() != 1) {
            throw VerbException.wrongCall("Name one file: recipes-import FILE.");
        }
        FoundRecipes found = files.read(call.file(call.arguments().get(0)), call.progress());
        if (found.recipes().isEmpty()) {
            throw VerbException.rejected(String.join(" ", found.problems()));
        }
        boolean fresh = call.has("--new-ingredients");
        Set<Integer> good = numbers(found, call.has("--with-gaps"), fresh);
        boolean whole = good.size() == wanted(found) && found.problems().isEmpty();
        boolean write = !call.has("--preview")
                && !good.isEmpty()
                && (whole || call.has("--accept-good") || call.has("--with-gaps"));
        Optional<Taken> taken = write ? Optional.of(files.take(found, good, fresh, call.progress())) : Optional.empty();
        return new Report(
                outcome(call, found, taken, whole),
                ImportReport.json(found, taken, fresh),
                ImportReport.lines(found, taken, fresh));
    }

    private static Set<Integer> numbers(FoundRecipes found, boolean gaps, boolean fresh) {
        return found.recipes().stream()
                .filter(each -> each.presence() != Presence.SAME && (gaps || each.complete(fresh)))
                .map(Found::number)
                .collect(Collectors.toSet());
    }

    private static int wanted(FoundRecipes found) {
        return (int) found.recipes().stream()
                .filter(each -> each.presence() != Presence.SAME)
                .count();
    }

    private static Outcome outcome(VerbCall call, FoundRecipes found, Optional<Taken> taken, boolean whole) {
        if (taken.isPresent()) {
            boolean refused = !taken.get().problems().isEmpty();
            return refused ? Outcome.REJECTED : clean(found) && whole ? Outcome.DONE : Outcome.LOOK;
        }
        boolean nothingToDo = wanted(found) == 0 && found.problems().isEmpty();
        if (nothingToDo) {
            return Outcome.DONE;
        }
        return call.has("--preview") ? (whole && clean(found) ? Outcome.DONE : Outcome.LOOK) : Outcome.REJECTED;
    }

    private static boolean clean(FoundRecipes found) {
        return found.recipes().stream().allMatch(each -> each.remarks().isEmpty() && each.complete(true))
                && List.copyOf(found.problems()).isEmpty();
    }
}
