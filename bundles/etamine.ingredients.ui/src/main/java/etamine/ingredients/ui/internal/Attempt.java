package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import java.util.function.UnaryOperator;

/** What somebody typed, understood or not. */
sealed interface Attempt {

    /**
     * Understood.
     *
     * @param edit makes the change to the ingredient as it is when it is saved
     */
    record Edit(UnaryOperator<Ingredient> edit) implements Attempt {}

    /**
     * Not understood.
     *
     * @param sentence what to do
     */
    record Bad(String sentence) implements Attempt {}
}
