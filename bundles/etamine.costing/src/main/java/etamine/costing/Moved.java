package etamine.costing;

import etamine.measures.Money;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What has changed since a day. A document written later counts as it was first written, and an item first priced later
 * counts with its first price: what is not known never counts as zero.
 *
 * @param since the day; everything on it counts
 * @param prices every price move, oldest first
 * @param plates every recipe on the menu whose cost has moved, the largest rise first
 */
public record Moved(LocalDate since, List<PriceMove> prices, List<PlateMove> plates) {

    /** Copies the lists. */
    public Moved {
        prices = List.copyOf(prices);
        plates = List.copyOf(plates);
    }

    /**
     * A price that changed.
     *
     * @param item the item
     * @param on the first day of the new price
     * @param from the price before, per kg, l, piece or own word
     * @param to the price after
     * @param percent by how much, two decimals; empty when it was zero before
     * @param source where the new price comes from, in words
     */
    public record PriceMove(
            String item, LocalDate on, UnitPrice from, UnitPrice to, Optional<BigDecimal> percent, String source) {}

    /**
     * A plate whose cost changed.
     *
     * @param recipe the recipe
     * @param before the cost of one portion then
     * @param now the cost of one portion now
     * @param effects the change taken apart
     * @param causes what moved it, the largest first
     * @param lowerBound whether a price is missing, so that the costs are at least that
     * @param written empty, or the day its recipe was first written when that is later
     * @param foodCostPercent now, where the net price is not zero
     * @param target the food cost it should not exceed, where there is one
     */
    public record PlateMove(
            String recipe,
            Money before,
            Money now,
            Effects effects,
            List<Cause> causes,
            boolean lowerBound,
            Optional<LocalDate> written,
            Optional<BigDecimal> foodCostPercent,
            Optional<BigDecimal> target) {

        /** Copies the list. */
        public PlateMove {
            causes = List.copyOf(causes);
        }

        /** By how much the cost changed; the effects add up to it exactly. */
        public Money change() {
            return now.minus(before);
        }

        /** Whether it now costs more than its target allows. */
        public boolean overTarget() {
            return target.isPresent()
                    && foodCostPercent.isPresent()
                    && foodCostPercent.get().compareTo(target.get()) > 0;
        }
    }

    /**
     * A change of cost taken apart; the four add up to it exactly. Each is the average, over all orders in which the four
     * kinds of change can be made one after the other, of what that kind adds, so that no order is preferred.
     *
     * @param price other prices of bought items
     * @param yield other yields of preparations, and batches that give more or less of what they make
     * @param portion other sizes of portions, and more or less of the same things on a plate
     * @param recipe everything else: other lines, other measures, another Q factor or packaging
     */
    public record Effects(Money price, Money yield, Money portion, Money recipe) {

        /** What the four add up to. */
        public Money sum() {
            return price.plus(yield).plus(portion).plus(recipe);
        }
    }

    /** The kinds of change. */
    public enum Kind {
        /** A price. */
        PRICE,
        /** A yield. */
        YIELD,
        /** A portion. */
        PORTION,
        /** Anything else about a recipe or an item. */
        RECIPE
    }

    /**
     * Something that moved a plate.
     *
     * @param kind what kind of change
     * @param subject the item or recipe that changed
     * @param amount how much of the plate's change comes from it; empty when several of its kind cannot be told apart
     * @param text what changed, in words
     */
    public record Cause(Kind kind, String subject, Optional<Money> amount, String text) {}
}
