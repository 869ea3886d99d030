package etamine.recipes.internal.allergen;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.AllergenReasons;
import etamine.recipes.AllergenRollUp;
import etamine.recipes.Cards;
import etamine.recipes.internal.RecipeShelf;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** {@code allergens [ID...] [--list LIST]}: allergens and diets of recipes or items, with the reasons. */
@Component
public final class AllergensVerb implements Verb {
    private final RecipeShelf shelf;
    private final AllergenRollUp rollUp;

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<Kitchen> kitchens = List.of();

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<Cards> papers = List.of();

    /** Reports what that roll-up says of that shelf. */
    @Activate
    public AllergensVerb(@Reference RecipeShelf shelf, @Reference AllergenRollUp rollUp) {
        this.shelf = shelf;
        this.rollUp = rollUp;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("allergens", "allergens and diets of plates and drinks, or of recipes and items", "[ID...]")
                .with("--list", "LIST", "declared by which list: eu, us, fsanz, canada or codex; else the kitchen's")
                .with("--all", "", "every recipe, not only plates and drinks")
                .with("--pdf", "FILE", "the plates and drinks of the menu as a sheet for the wall");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        DeclarationList list = list(call);
        List<AllergenReasons> chosen = new ArrayList<>();
        for (String id : call.arguments()) {
            chosen.add(reasons(id));
        }
        if (call.arguments().isEmpty()) {
            shelf.graph().recipes().values().stream()
                    .filter(recipe -> call.has("--all") || onTheMenu(recipe))
                    .map(rollUp::why)
                    .forEach(chosen::add);
        }
        AllergenReport report = new AllergenReport(list, chosen);
        boolean overview = call.arguments().isEmpty();
        if (call.has("--pdf")) {
            sheet(call, list);
        }
        return new Report(
                report.settled() ? Outcome.DONE : Outcome.LOOK,
                report.json(),
                overview ? report.matrix() : report.details());
    }

    private void sheet(VerbCall call, DeclarationList list) throws VerbException {
        Path file = call.file(call.option("--pdf").orElseThrow());
        Cards writer = papers.stream()
                .findFirst()
                .orElseThrow(() -> VerbException.wrongCall(
                        "Papers cannot be written now; start the module etamine.documents and try again."));
        try {
            writer.allergens(list, writer.usual()).pdf(file);
        } catch (IOException failed) {
            throw VerbException.wrongCall(file + " cannot be written: " + failed.getMessage() + ".");
        }
    }

    private DeclarationList list(VerbCall call) throws VerbException {
        try {
            Optional<DeclarationList> chosen = call.option("--list").map(DeclarationList::of);
            return chosen.or(() -> kitchens.stream()
                            .findFirst()
                            .map(kitchen -> kitchen.house().allergenList()))
                    .orElse(DeclarationList.EU);
        } catch (IllegalArgumentException unknown) {
            throw VerbException.wrongCall(String.valueOf(unknown.getMessage()));
        }
    }

    private AllergenReasons reasons(String id) throws VerbException {
        Recipe recipe = shelf.graph().recipes().get(id);
        Optional<AllergenReasons> found = recipe != null ? Optional.of(rollUp.why(recipe)) : rollUp.whyItem(id);
        return found.orElseThrow(() -> VerbException.wrongCall("There is neither a recipe nor an item “" + id
                + "”; the verbs recipes and items list the ids there are."));
    }

    private static boolean onTheMenu(Recipe recipe) {
        return (recipe.kind() == Kind.PLATE || recipe.kind() == Kind.DRINK)
                && !recipe.standing().archived();
    }
}
