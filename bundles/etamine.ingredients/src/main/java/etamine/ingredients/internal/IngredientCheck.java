package etamine.ingredients.internal;

import etamine.base.Problem;
import etamine.kitchen.check.BookCheck;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Checks every ingredient in the book. */
@Component
public final class IngredientCheck implements BookCheck {
    private final IngredientShelf shelf;

    /** Checks that shelf. */
    @Activate
    public IngredientCheck(@Reference IngredientShelf shelf) {
        this.shelf = shelf;
    }

    @Override
    public List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        shelf.unreadable()
                .forEach((id, reason) -> problems.add(Problem.error(
                        "unreadable",
                        IngredientShelf.NAME + "/" + id,
                        "The ingredient “" + id + "” cannot be read (" + reason + "); load a corrected entry of it.")));
        shelf.ingredients().values().forEach(ingredient -> problems.addAll(IngredientRules.problems(ingredient)));
        return List.copyOf(problems);
    }
}
