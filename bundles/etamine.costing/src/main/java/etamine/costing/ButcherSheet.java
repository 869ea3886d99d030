package etamine.costing;

import etamine.base.Explanation;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The butcher's test of something taken apart, trimmed or cooked. Amounts are unrounded, with at most ten places; factors
 * have ten, rounded half up.
 *
 * @param recipe the recipe
 * @param name what it is called
 * @param bought what it is made from: the first thing it uses
 * @param boughtName what that is called
 * @param purchased its weight as purchased
 * @param dealer what a kg of it costs in the book now; empty when no price is known
 * @param cost what one batch costs
 * @param parts what it gives, in the recipe's order
 * @param loss what is left of the weight after all parts; less than zero when more came out than went in
 * @param asked the price a kg that was asked for; empty when none
 * @param notes what is missing or doubtful, as sentences
 * @param explained how the figures come about
 */
public record ButcherSheet(
        String recipe,
        String name,
        String bought,
        String boughtName,
        Quantity purchased,
        Optional<UnitPrice> dealer,
        Money cost,
        List<Part> parts,
        Quantity loss,
        Optional<UnitPrice> asked,
        List<String> notes,
        Explanation explained) {

    /** Copies the lists. */
    public ButcherSheet {
        parts = List.copyOf(parts);
        notes = List.copyOf(notes);
    }

    /** The usable parts: those that bear the cost rather than a credit. */
    public List<Part> usable() {
        return parts.stream().filter(part -> part.usable().isPresent()).toList();
    }

    /**
     * One part.
     *
     * @param item the item
     * @param name what it is called
     * @param weight what one batch gives
     * @param percent of the weight as purchased, two decimals
     * @param valuedAt its credit or market value a kg; empty when it has none
     * @param value its credit, or the share of the cost it bears
     * @param usable what a usable part comes to; empty for a credited one
     */
    public record Part(
            String item,
            String name,
            Quantity weight,
            BigDecimal percent,
            Optional<UnitPrice> valuedAt,
            Money value,
            Optional<Usable> usable) {}

    /**
     * What a usable part comes to.
     *
     * @param perKg cost of a usable kg
     * @param factor cost of a usable kg over the dealer's price a kg; empty when that is not known
     * @param askedPerKg cost of a usable kg at the price asked for: factor x that price
     * @param portion its size; empty when none is set
     */
    public record Usable(
            Money perKg, Optional<BigDecimal> factor, Optional<Money> askedPerKg, Optional<Portion> portion) {}

    /**
     * One portion of a usable part.
     *
     * @param size its weight
     * @param count whole portions in what one batch gives, rounded down
     * @param cost of one
     * @param factor cost of one over the dealer's price a kg; empty when that is not known
     * @param askedCost cost of one at the price asked for
     */
    public record Portion(
            Quantity size, long count, Money cost, Optional<BigDecimal> factor, Optional<Money> askedCost) {}

    /**
     * What has to be bought for so many portions of a part: their weight over the part's share of the weight as purchased,
     * exact and not rounded to whole pieces; empty when the part has no portion or no weight.
     */
    public Optional<Need> forPortions(Part part, long portions) {
        return part.usable()
                .flatMap(Usable::portion)
                .filter(portion -> part.weight().signum() > 0)
                .map(portion -> {
                    Quantity usable = portion.size()
                            .times(Ratio.of(portions))
                            .in(part.weight().unit());
                    return new Need(usable, purchased.times(usable.dividedBy(part.weight())));
                });
    }

    /**
     * What portions take.
     *
     * @param usable their weight
     * @param purchased what has to be bought for it
     */
    public record Need(Quantity usable, Quantity purchased) {}
}
