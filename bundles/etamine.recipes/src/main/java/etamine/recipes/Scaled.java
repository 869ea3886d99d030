package etamine.recipes;

import etamine.kitchen.recipe.Recipe;
import etamine.measures.Ratio;
import java.util.List;

/** A recipe scaled, or why it cannot be. */
public sealed interface Scaled {

    /**
     * It worked.
     *
     * @param recipe with its quantities multiplied; steps are as written
     * @param factor new yield over old, exact
     * @param batches the fewest whole batches that give at least as much
     * @param remarks what does not follow the factor
     */
    record Batch(Recipe recipe, Ratio factor, long batches, List<String> remarks) implements Scaled {
        /** Copies the list. */
        public Batch {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * It could not be scaled.
     *
     * @param text a sentence that says what to do
     */
    record Impossible(String text) implements Scaled {}
}
