package etamine.kitchen.recipe;

import etamine.base.Problem;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.util.List;
import java.util.Map;

/**
 * What a demand comes to when it is followed through the recipes.
 *
 * @param bought quantities as purchased of everything that no recipe makes, in its item's count dimension
 * @param batches how many batches of each recipe, exact and not rounded to whole batches
 * @param parts for each bought item, the recipes that ask for it and how much each asks for
 * @param problems lines that could not be followed; their need is missing from {@code bought}
 */
public record Requirement(
        Map<String, Quantity> bought,
        Map<String, Ratio> batches,
        Map<String, Map<String, Quantity>> parts,
        List<Problem> problems) {

    /** Copies the collections. */
    public Requirement {
        bought = Map.copyOf(bought);
        batches = Map.copyOf(batches);
        parts = Map.copyOf(parts);
        problems = List.copyOf(problems);
    }
}
