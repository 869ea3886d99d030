package etamine.recipes.internal.rule;

import etamine.base.Problem;
import etamine.kitchen.check.BookCheck;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.form.LinePointers;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Checks every recipe in the book. */
@Component
public final class RecipeCheck implements BookCheck {
    private final RecipeShelf shelf;
    private final KnownItems known;
    private final MadeItems made;

    /** Checks that shelf. */
    @Activate
    public RecipeCheck(@Reference RecipeShelf shelf, @Reference KnownItems known, @Reference MadeItems made) {
        this.shelf = shelf;
        this.known = known;
        this.made = made;
    }

    @Override
    public List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        shelf.unreadable()
                .forEach((id, reason) -> problems.add(Problem.error(
                        "unreadable",
                        RecipeShelf.NAME + "/" + id,
                        "The recipe “" + id + "” cannot be read (" + reason + "); load a corrected entry of it.")));
        RecipeGraph graph = shelf.graph();
        ItemView items = ItemView.of(known, made);
        for (Recipe recipe : graph.recipes().values()) {
            RecipeRules.of(recipe, graph, items, LinePointers.of(recipe)).stream()
                    .map(finding -> finding.problem(recipe.id()))
                    .forEach(problems::add);
        }
        return List.copyOf(problems);
    }
}
