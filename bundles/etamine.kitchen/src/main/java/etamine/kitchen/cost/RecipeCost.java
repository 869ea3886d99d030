package etamine.kitchen.cost;

import etamine.base.Problem;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
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
 * @param missing items whose price is missing
 * @param warnings what makes a figure doubtful
 * @param lines what it was made from
 * @param labour the hands-on work in it; empty while the kitchen does not cost work
 * @param drinks the plate together with each drink that goes with it
 * @param complete false when a price or an equivalence is missing below it, so that every figure is a lower bound
 */
public record RecipeCost(
        String recipe,
        Money batch,
        List<Made> makes,
        Optional<Money> portion,
        Optional<PlateCost> plate,
        List<String> missing,
        List<Problem> warnings,
        List<Line> lines,
        Optional<Labour> labour,
        List<WithDrink> drinks,
        boolean complete) {

    /** Copies the lists. */
    public RecipeCost {
        makes = List.copyOf(makes);
        missing = List.copyOf(missing);
        warnings = List.copyOf(warnings);
        lines = List.copyOf(lines);
        drinks = List.copyOf(drinks);
    }

    /** A cost without labour and drinks. */
    public RecipeCost(
            String recipe,
            Money batch,
            List<Made> makes,
            Optional<Money> portion,
            Optional<PlateCost> plate,
            List<String> missing,
            List<Problem> warnings,
            List<Line> lines) {
        this(
                recipe,
                batch,
                makes,
                portion,
                plate,
                missing,
                warnings,
                lines,
                Optional.empty(),
                List.of(),
                missing.isEmpty());
    }

    /**
     * The hands-on work in a recipe, its own and that of everything made for it.
     *
     * @param batch what the work of one batch costs, unrounded
     * @param portion what it comes to in one portion of the main thing, unrounded; empty when it has no portion
     * @param own of the batch's, what the recipe's own steps cost
     */
    public record Labour(Money batch, Optional<Money> portion, Money own) {}

    /**
     * A plate and a drink poured with it, one portion of each.
     *
     * @param drink the drink's recipe
     * @param level its price level in the kitchen's words; empty when not said
     * @param poured the drink alone; its food cost percent is the pour cost
     * @param cost both together, unrounded
     * @param net both menu prices without tax, unrounded
     * @param costPercent cost over net, in percent, two decimals; empty when the net price is zero
     * @param contribution net less cost, unrounded
     * @param complete false when a price of the drink is missing, so that its cost is a lower bound
     */
    public record WithDrink(
            String drink,
            String level,
            PlateCost poured,
            Money cost,
            Money net,
            Optional<BigDecimal> costPercent,
            Money contribution,
            boolean complete) {}

    /**
     * One thing made.
     *
     * @param item the item
     * @param quantity what one batch gives
     * @param unitCost its cost
     * @param credited whether it carries a credit rather than a share
     * @param byMarketValue whether its share was reckoned by market value rather than by weight
     */
    public record Made(String item, Quantity quantity, UnitPrice unitCost, boolean credited, boolean byMarketValue) {

        /** A thing made whose share was reckoned by weight. */
        public Made(String item, Quantity quantity, UnitPrice unitCost, boolean credited) {
            this(item, quantity, unitCost, credited, false);
        }
    }

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
     * @param origin the price source, its day and age; empty for what is made here or has no price
     */
    public record Line(
            String item,
            Quantity quantity,
            Optional<String> as,
            Optional<Quantity> asPurchased,
            Optional<UnitPrice> unitPrice,
            Optional<Money> cost,
            String source,
            Optional<PriceOrigin> origin) {

        /** A line of which only words say where its price comes from. */
        public Line(
                String item,
                Quantity quantity,
                Optional<String> as,
                Optional<Quantity> asPurchased,
                Optional<UnitPrice> unitPrice,
                Optional<Money> cost,
                String source) {
            this(item, quantity, as, asPurchased, unitPrice, cost, source, Optional.empty());
        }
    }
}
