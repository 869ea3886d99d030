package etamine.costing;

import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What becomes of a price: another one outright, or the present one moved by a percentage. */
public sealed interface PriceChange {

    /** That price instead. */
    static PriceChange to(UnitPrice price) {
        return new To(price);
    }

    /** The present price moved by so many percent: 14 makes it dearer, -5 cheaper. */
    static PriceChange by(BigDecimal percent) {
        return new By(percent);
    }

    /** What a price becomes; at most ten decimals, rounded half even. */
    UnitPrice of(UnitPrice now);

    /**
     * Another price outright.
     *
     * @param price the price
     */
    record To(UnitPrice price) implements PriceChange {
        @Override
        public UnitPrice of(UnitPrice now) {
            return price;
        }
    }

    /**
     * Moved by a percentage.
     *
     * @param percent by how much, not below -100
     */
    record By(BigDecimal percent) implements PriceChange {
        private static final int PLACES = 10;
        private static final int FEWEST_PLACES = 2;

        @Override
        public UnitPrice of(UnitPrice now) {
            BigDecimal factor = BigDecimal.ONE.add(percent.movePointLeft(2));
            BigDecimal moved = now.amount().multiply(factor).stripTrailingZeros();
            int places = Math.min(PLACES, Math.max(FEWEST_PLACES, moved.scale()));
            return new UnitPrice(moved.setScale(places, RoundingMode.HALF_EVEN), now.per());
        }
    }
}
