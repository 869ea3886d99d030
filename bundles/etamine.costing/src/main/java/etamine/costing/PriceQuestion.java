package etamine.costing;

import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What a price is asked for.
 *
 * @param recipe the recipe; empty for a plate that is not in the book yet
 * @param cost what one portion costs, not less than zero
 * @param labour the hands-on work of one portion; empty when nobody reckons it
 * @param taxPercent tax in percent of the price without it, not less than zero
 * @param taxIncluded whether the price on the menu includes the tax, so that it is what gets rounded
 * @param target what it should come to
 * @param rounding how it becomes a price for the menu
 */
public record PriceQuestion(
        Optional<String> recipe,
        Money cost,
        Optional<Money> labour,
        BigDecimal taxPercent,
        boolean taxIncluded,
        PriceTarget target,
        PriceRounding rounding) {

    /** Refuses a cost, labour or tax of less than nothing. */
    public PriceQuestion {
        if (cost.signum() < 0) {
            throw new IllegalArgumentException(
                    "A price cannot be worked out from a cost of less than zero, " + cost + "; look at its credits.");
        }
        if (labour.filter(work -> work.signum() < 0).isPresent()) {
            throw new IllegalArgumentException("Labour cannot cost less than zero.");
        }
        if (taxPercent.signum() < 0) {
            throw new IllegalArgumentException("Tax cannot be less than 0 percent.");
        }
    }

    /** A plate of that cost that is not in the book yet. */
    public static PriceQuestion of(Money cost, BigDecimal taxPercent, PriceTarget target, PriceRounding rounding) {
        return new PriceQuestion(Optional.empty(), cost, Optional.empty(), taxPercent, true, target, rounding);
    }

    /** The same for another cost of one portion. */
    public PriceQuestion withCost(Money other) {
        return new PriceQuestion(recipe, other, labour, taxPercent, taxIncluded, target, rounding);
    }

    /** The same with another target. */
    public PriceQuestion withTarget(PriceTarget other) {
        return new PriceQuestion(recipe, cost, labour, taxPercent, taxIncluded, other, rounding);
    }

    /** The same with another rounding. */
    public PriceQuestion withRounding(PriceRounding other) {
        return new PriceQuestion(recipe, cost, labour, taxPercent, taxIncluded, target, other);
    }

    /** The same with another tax, within the price on the menu or on top of it. */
    public PriceQuestion withTax(BigDecimal percent, boolean included) {
        return new PriceQuestion(recipe, cost, labour, percent, included, target, rounding);
    }

    /** The same with another cost of the hands-on work. */
    public PriceQuestion withLabour(Money work) {
        return new PriceQuestion(recipe, cost, Optional.of(work), taxPercent, taxIncluded, target, rounding);
    }
}
