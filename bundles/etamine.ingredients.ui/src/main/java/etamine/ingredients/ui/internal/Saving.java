package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;

/**
 * Saves what somebody typed about an ingredient.
 *
 * @param save gets the ingredient's id and the edit
 */
record Saving(BiConsumer<String, UnaryOperator<Ingredient>> save) {

    /** Saves what was understood; answers what to do about what was not. */
    Optional<String> attempt(String about, Attempt attempt) {
        if (attempt instanceof Attempt.Edit understood) {
            save.accept(about, understood.edit());
            return Optional.empty();
        }
        return Optional.of(((Attempt.Bad) attempt).sentence());
    }
}
