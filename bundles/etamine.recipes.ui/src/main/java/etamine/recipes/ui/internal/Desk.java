package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Change;
import etamine.shell.Frame;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * What a page of the bench works with.
 *
 * @param ware the services
 * @param model what the bench shows and does
 * @param story what the slate says
 * @param frame the window
 * @param changed is told after each wish to change the recipes; warns when it was refused and shows everything anew
 */
record Desk(Kitchenware ware, RecipesModel model, RecipeStory story, Frame frame, Consumer<Change> changed) {
    private static final int SHORT = 200;

    /** Makes one edit to a recipe beside the window and shows what became of it. */
    void edit(String id, UnaryOperator<Recipe> edit) {
        work("Saving", () -> model.save(id, edit));
    }

    /** Does any change beside the window and shows what became of it. */
    void work(String label, Supplier<Change> change) {
        frame.work(label, progress -> change.get(), changed);
    }

    /** Looks a recipe over, a long one beside the window. */
    void check(Recipe recipe, Consumer<Checked> then) {
        if (recipe.uses().size() <= SHORT) {
            then.accept(model.check(recipe));
        } else {
            frame.work("Looking over " + recipe.name(), progress -> model.check(recipe), then);
        }
    }
}
