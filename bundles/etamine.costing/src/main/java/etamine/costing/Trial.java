package etamine.costing;

import etamine.kitchen.cost.PlateCost;
import etamine.measures.Money;
import java.util.List;

/**
 * What an experiment comes to.
 *
 * @param plates every recipe on the menu that is not archived, in the order of ids
 * @param notes what could not be tried and why, as sentences
 */
public record Trial(List<Plate> plates, List<String> notes) {

    /** Copies the lists. */
    public Trial {
        plates = List.copyOf(plates);
        notes = List.copyOf(notes);
    }

    /** The plates whose cost or price differs from the book. */
    public List<Plate> moved() {
        return plates.stream().filter(Plate::moved).toList();
    }

    /**
     * One recipe on the menu.
     *
     * @param recipe its id
     * @param now as the book has it
     * @param then as the experiment has it
     * @param lowerBound whether a price below it is missing, so that both costs are at least that
     */
    public record Plate(String recipe, PlateCost now, PlateCost then, boolean lowerBound) {

        /** Whether the experiment changes anything. */
        public boolean moved() {
            return now != then && !now.equals(then);
        }

        /** By how much the cost of one portion changes. */
        public Money change() {
            return then.cost().minus(now.cost());
        }

        /** By how much the contribution of one portion changes. */
        public Money contributionChange() {
            return then.contribution().minus(now.contribution());
        }
    }
}
