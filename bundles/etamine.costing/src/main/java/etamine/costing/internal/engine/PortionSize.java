package etamine.costing.internal.engine;

import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.util.Optional;

/** How large one portion of a recipe's main thing is. */
public final class PortionSize {
    private PortionSize() {}

    /** As the recipe says, or one portion where it makes portions; empty when it says nothing. */
    public static Optional<Quantity> of(Recipe recipe) {
        return recipe.portion()
                .or(() -> makesPortions(recipe) ? Optional.of(Quantity.of(1, Unit.PORTION)) : Optional.empty());
    }

    /** Whether its main thing is counted in portions. */
    public static boolean makesPortions(Recipe recipe) {
        return !recipe.makes().isEmpty()
                && recipe.makes().get(0).quantity().unit().isLike(Unit.PORTION);
    }

    /** The main thing it makes; empty for a recipe that makes nothing. */
    static Optional<Make> main(Recipe recipe) {
        return recipe.makes().stream().findFirst();
    }
}
