package etamine.kitchen.item;

import etamine.measures.Equivalence;
import etamine.measures.Ratio;
import java.util.List;

/**
 * A way of preparing an item.
 *
 * @param name as written in recipes, such as {@code peeled, large dice}
 * @param yield edible portion over quantity as purchased, by weight; more than 0, at most 1 unless it takes up water
 * @param measures equivalences that hold for the prepared item, before the item's own
 */
public record Preparation(String name, Ratio yield, List<Equivalence> measures) {

    /** Copies the list. */
    public Preparation {
        measures = List.copyOf(measures);
    }
}
