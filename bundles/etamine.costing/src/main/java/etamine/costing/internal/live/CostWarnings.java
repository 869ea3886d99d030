package etamine.costing.internal.live;

import etamine.base.Problem;
import etamine.costing.internal.engine.CompiledRecipe;
import etamine.costing.internal.state.CostState;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.PairedDrink;
import etamine.kitchen.recipe.Recipe;
import java.util.ArrayList;
import java.util.List;

/** What makes the cost of a recipe doubtful. */
final class CostWarnings {
    private final CostState state;

    CostWarnings(CostState state) {
        this.state = state;
    }

    /**
     * The warnings of one recipe.
     *
     * @param priced whether every item below it has a price
     */
    List<Problem> of(CompiledRecipe compiled, boolean priced) {
        Recipe recipe = compiled.recipe();
        List<Problem> warnings = new ArrayList<>(compiled.problems());
        if (priced && compiled.creditSum() > state.batch(recipe)) {
            warnings.add(warning(
                    "credits-above-cost",
                    recipe,
                    "the credits are more than the batch costs, so what remains costs less than nothing. Lower the"
                            + " credits unless that is meant."));
        }
        for (int i = 0; i < recipe.uses().size(); i++) {
            Item item = state.items().get(recipe.uses().get(i).item());
            if (item != null && !state.isMade(item.id()) && state.quote(item).isEmpty()) {
                warnings.add(unpriced(recipe, i, item));
            }
        }
        state.labour().ifPresent(work -> warnings.addAll(work.problems(recipe)));
        for (PairedDrink drink : recipe.drinks()) {
            if (recipe.menu().isPresent() && !state.plates().byId().containsKey(drink.recipe())) {
                warnings.add(warning(
                        "unpriced-drink",
                        recipe,
                        "the drink " + drink.recipe() + " has no recipe with a portion and a menu price; write one to"
                                + " see what both leave together."));
            }
        }
        return warnings;
    }

    private Problem unpriced(Recipe recipe, int line, Item item) {
        String text = state.board()
                .unusable(item)
                .map(why -> recipe.name() + ": line " + (line + 1) + ", " + item.name()
                        + " has a price that cannot be used: " + why)
                .orElse(item.name() + " has no price; the cost is a lower bound. Write one or add an offer.");
        return Problem.warning("missing-price", "ingredients/" + item.id(), text);
    }

    private static Problem warning(String code, Recipe recipe, String text) {
        return Problem.warning(code, "recipes/" + recipe.id(), recipe.name() + ": " + text);
    }
}
