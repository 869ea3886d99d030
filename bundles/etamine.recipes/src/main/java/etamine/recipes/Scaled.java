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
     * @param factor new yield over old, exact; a whole number for a recipe that is only made in whole batches
     * @param asked the factor that what was asked for comes to; differs only where whole batches are made
     * @param batches the fewest whole batches that give at least as much as was asked for
     * @param uses beside every exact amount used what a cook would measure
     * @param makes the same for what is made
     * @param reasons how the factor came about, such as which ingredient limits it
     * @param remarks what does not follow the factor and wants a cook's judgement; nothing is changed for them
     */
    record Batch(
            Recipe recipe,
            Ratio factor,
            Ratio asked,
            long batches,
            List<Practical> uses,
            List<Practical> makes,
            List<String> reasons,
            List<String> remarks)
            implements Scaled {
        /** Copies the lists. */
        public Batch {
            uses = List.copyOf(uses);
            makes = List.copyOf(makes);
            reasons = List.copyOf(reasons);
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
