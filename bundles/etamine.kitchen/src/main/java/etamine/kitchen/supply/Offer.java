package etamine.kitchen.supply;

import etamine.measures.Pack;
import etamine.measures.Quantity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;

/**
 * One article of one supplier.
 *
 * @param supplier the supplier
 * @param item the item it is
 * @param code the supplier's article number
 * @param gtin the GS1 article number; empty when not known
 * @param pack what one pack holds
 * @param amount the price without tax: of one pack, or of {@code per} when it is sold by weight
 * @param per the quantity the price is for; empty when it is per pack
 * @param breaks lower prices from a number of packs on, for all packs of the line
 * @param lifeOnArrival how long it keeps from delivery
 * @param from the first day the price holds
 */
public record Offer(
        String supplier,
        String item,
        String code,
        String gtin,
        Pack pack,
        BigDecimal amount,
        Optional<Quantity> per,
        List<Break> breaks,
        Optional<Period> lifeOnArrival,
        Optional<LocalDate> from) {

    /**
     * A lower price for more packs.
     *
     * @param fromPacks from this many packs on
     * @param amount the price, in the terms of the offer
     */
    public record Break(int fromPacks, BigDecimal amount) {}

    /** Copies the list. */
    public Offer {
        breaks = List.copyOf(breaks);
    }

    /** The price for an order of that many packs, in the terms of the offer. */
    public BigDecimal amountFor(long packs) {
        BigDecimal best = amount;
        int reached = 0;
        for (Break step : breaks) {
            if (packs >= step.fromPacks() && step.fromPacks() > reached) {
                reached = step.fromPacks();
                best = step.amount();
            }
        }
        return best;
    }
}
