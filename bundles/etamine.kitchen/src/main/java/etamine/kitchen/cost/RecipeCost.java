package etamine.kitchen.cost;

import etamine.base.Problem;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.util.List;
import java.util.Optional;

/**
 * The cost of a recipe.
 *
 * @param recipe its id
 * @param batch the cost of one batch, unrounded
 * @param makes what each thing made costs
 * @param portion the cost of one portion of the main thing, without Q factor; empty when it has no portion
 * @param plate the menu figures; empty when it has no menu price
 * @param missing items whose price is missing; when not empty every figure is a lower bound
 * @param warnings what makes a figure doubtful
 * @param lines what it was made from
 */
public record RecipeCost(
        String recipe,
        Money batch,
        List<Made> makes,
        Optional<Money> portion,
        Optional<PlateCost> plate,
        List<String> missing,
        List<Problem> warnings,
        List<Line> lines) {

    /** Copies the lists. */
    public RecipeCost {
        makes = List.copyOf(makes);
        missing = List.copyOf(missing);
        warnings = List.copyOf(warnings);
        lines = List.copyOf(lines);
    }

    /**
     * One thing made.
     *
     * @param item the item
     * @param quantity what one batch gives
     * @param unitCost its cost
     * @param credited whether it carries a credit rather than a share
     */
    public record Made(String item, Quantity quantity, UnitPrice unitCost, boolean credited) {}

    /**
     * One line used.
     *
     * @param item the item
     * @param quantity as written
     * @param as the preparation
     * @param asPurchased the same before trimming, in the item's count dimension; empty when it cannot be converted
     * @param unitPrice the price it was reckoned with; empty when missing
     * @param cost what it comes to, unrounded; empty when missing
     * @param source where the price comes from, in words
     */
    public record Line(
            String item,
            Quantity quantity,
            Optional<String> as,
            Optional<Quantity> asPurchased,
            Optional<UnitPrice> unitPrice,
            Optional<Money> cost,
            String source) {}
}
