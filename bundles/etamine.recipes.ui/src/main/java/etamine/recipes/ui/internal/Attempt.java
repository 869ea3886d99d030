package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import java.util.function.UnaryOperator;

/** What somebody typed, understood or not. */
sealed interface Attempt {

    /**
     * Understood.
     *
     * @param edit makes the change to the recipe as it is when it is saved
     */
    record Edit(UnaryOperator<Recipe> edit) implements Attempt {}

    /**
     * Not understood.
     *
     * @param sentence what to do
     */
    record Bad(String sentence) implements Attempt {}
}
