package etamine.ordering.internal.plan;

import etamine.kitchen.supply.Offer;
import etamine.measures.Money;
import etamine.measures.Ratio;
import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * An offer as a plan sees it, on the days on which its price holds. An article whose price changes has one for each
 * price.
 *
 * @param offer the offer
 * @param content what one pack holds, more than 0
 * @param tiers what one pack costs from how many packs on, the first from 1, rising
 * @param life how long it keeps from delivery; empty when it keeps
 * @param holds the delivery days it can be had for
 */
public record OfferModel(Offer offer, long content, List<Tier> tiers, Optional<Period> life, Days holds) {

    /**
     * Days of a plan.
     *
     * @param from the first
     * @param before the first that is no longer one of them
     */
    public record Days(int from, int before) {
        /** Every day there is. */
        public static final Days ALL = new Days(Integer.MIN_VALUE, Integer.MAX_VALUE);
    }

    /**
     * A price for all packs of a line.
     *
     * @param fromPacks from this many packs on
     * @param packPrice what one pack costs then
     */
    public record Tier(int fromPacks, Money packPrice) {}

    /** Copies the list. */
    public OfferModel {
        tiers = List.copyOf(tiers);
    }

    /** Whether it can be had for a delivery on that day. */
    public boolean holdsOn(int day) {
        return day >= holds.from() && day < holds.before();
    }

    /** Whether it is the same supplier's same article, if at another price. */
    public boolean isArticleOf(OfferModel other) {
        return offer.supplier().equals(other.offer.supplier()) && offer.code().equals(other.offer.code());
    }

    /** The price tier that so many packs reach. */
    public Tier tier(long packs) {
        Tier reached = tiers.get(0);
        for (Tier tier : tiers) {
            reached = packs >= tier.fromPacks() ? tier : reached;
        }
        return reached;
    }

    /** What so many packs cost, rounded to what can be paid. */
    public Money amount(long packs) {
        return tier(packs).packPrice().times(Ratio.of(packs)).rounded();
    }

    /** The last day on which what comes on {@code day} may be used, counted from {@code start}. */
    public int lastDay(LocalDate start, int day) {
        return life.map(period -> {
                    LocalDate last = start.plusDays(day).plus(period);
                    return Math.toIntExact(ChronoUnit.DAYS.between(start, last));
                })
                .orElse(Batch.KEEPS);
    }

    /** How many packs hold at least that much; purchases are rounded up. */
    public long packsFor(long grains) {
        return grains <= 0 ? 0 : Math.floorDiv(grains - 1, content) + 1;
    }

    /** How many packs there is room for. */
    public long packsWithin(long room) {
        return Math.max(0, Math.floorDiv(room, content));
    }
}
