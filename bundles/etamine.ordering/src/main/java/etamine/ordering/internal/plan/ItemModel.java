package etamine.ordering.internal.plan;

import java.util.List;
import java.util.Optional;

/**
 * An item as a plan sees it; all amounts in grains.
 *
 * @param item the item's id
 * @param grain what a grain is
 * @param wanted what is wanted of it
 * @param batches what is there and what is already on its way
 * @param offers who sells it
 * @param obstacle why nobody sells it, in a sentence; empty when somebody does
 */
public record ItemModel(
        String item, Grain grain, Wanted wanted, List<Batch> batches, List<OfferModel> offers, String obstacle) {

    /** Copies the lists. */
    public ItemModel {
        batches = List.copyOf(batches);
        offers = List.copyOf(offers);
    }

    /** The item's id alone: models are looked up often, and there is one for each item. */
    @Override
    public int hashCode() {
        return item.hashCode();
    }

    /** The chosen article as it is offered for a delivery on that day. */
    public Optional<OfferModel> offer(OfferModel chosen, int day) {
        return offers.stream()
                .filter(offer -> offer.isArticleOf(chosen) && offer.holdsOn(day))
                .findFirst();
    }

    /**
     * What is wanted of an item. The arrays are not changed by anybody.
     *
     * @param use expected use by day, longer than the plan
     * @param par what should be there when service starts, by day; empty when no par is set
     * @param orderAt order only when down to this; {@link Long#MAX_VALUE} when always
     * @param capacity the most there is room for
     */
    public record Wanted(long[] use, long[] par, long orderAt, long capacity) {

        /** Whether a par is set. */
        public boolean hasPar() {
            return par.length > 0;
        }

        /** Expected use from one day to before another. */
        public long use(int from, int before) {
            long sum = 0;
            for (int day = Math.max(0, from); day < Math.min(before, use.length); day++) {
                sum = Math.addExact(sum, use[day]);
            }
            return sum;
        }

        /**
         * What should be there after a delivery, when the next can come on {@code next}: the highest par of the days
         * between, else their expected use and a tenth more for safety.
         */
        public long level(int delivery, int next) {
            if (!hasPar()) {
                long expected = use(delivery, next);
                return Math.addExact(expected, Math.floorDiv(expected + SAFETY_SHARE - 1, SAFETY_SHARE));
            }
            long highest = 0;
            for (int day = delivery; day < Math.min(next, par.length); day++) {
                highest = Math.max(highest, par[day]);
            }
            return highest;
        }
    }

    /** Expected use is topped up by one part in this many where no par is set. */
    static final long SAFETY_SHARE = 10;
}
