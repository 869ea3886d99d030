package etamine.kitchen.recipe;

import etamine.measures.Quantity;
import java.time.LocalDate;
import java.util.List;

/**
 * A butchery or cooking test: what one making of a recipe took and gave on the scales.
 *
 * @param date the day
 * @param by who weighed; empty when not said
 * @param in the weight that went in
 * @param out the weights that came out; what is missing to {@code in} was lost
 * @param note what was special about it; empty when nothing
 * @param accepted whether the recipe's working yield stands on it
 */
public record BatchTest(LocalDate date, String by, Quantity in, List<Weighed> out, String note, boolean accepted) {

    /** Copies the list. */
    public BatchTest {
        out = List.copyOf(out);
    }

    /** The same, accepted or not. */
    public BatchTest withAccepted(boolean changed) {
        return new BatchTest(date, by, in, out, note, changed);
    }

    /**
     * One thing weighed.
     *
     * @param item the thing made
     * @param quantity its weight
     */
    public record Weighed(String item, Quantity quantity) {}
}
