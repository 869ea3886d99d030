package etamine.inventory.internal;

import etamine.kitchen.stock.MovementKind;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.storage.LedgerEntry;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The perpetual moving average: what comes with a cost is added at that cost, what goes leaves at the average of the
 * moment, what comes without one enters at the average (as in OpenStax, Principles of Accounting, vol. 1, 2019, 10.3).
 * Exact until the price is asked for. Not thread-safe.
 */
final class MovingAverage {
    private static final int PLACES = 10;
    private static final int FEWEST_PLACES = 2;

    private final ItemMeasure measure;
    private @Nullable Dimension dimension;
    private Ratio amount = Ratio.ZERO;
    private Optional<Ratio> average = Optional.empty();

    MovingAverage(ItemMeasure measure) {
        this.measure = measure;
    }

    /** Takes the next entry, in the order they happened; moves between places change nothing. */
    void take(LedgerEntry entry) {
        LotKey lot = LotKey.of(entry.keys());
        if (Draft.kind(entry.keys().get("kind")) == MovementKind.MOVED) {
            return;
        }
        if (dimension == null) {
            dimension = lot.dimension();
        }
        if (lot.dimension() != dimension) {
            return;
        }
        Ratio moved = Ratio.of(entry.measures().get(StockJournal.AMOUNT));
        if (moved.signum() > 0) {
            come(moved, cost(lot));
        } else {
            amount = amount.plus(moved);
        }
    }

    private Optional<Ratio> cost(LotKey lot) {
        Quantity one = Quantity.fromBase(lot.dimension(), 1);
        return lot.unitCost()
                .flatMap(price -> measure.like(one, price.per().unit()).map(price::cost));
    }

    private void come(Ratio moved, Optional<Ratio> cost) {
        Optional<Ratio> each = cost.or(() -> average);
        Ratio held = amount.max(Ratio.ZERO);
        amount = amount.plus(moved);
        if (each.isEmpty() || amount.signum() <= 0) {
            return;
        }
        Ratio there = average.map(held::times).orElse(held.times(each.get()));
        Ratio added = amount.minus(held.min(amount));
        average = Optional.of(there.plus(added.times(each.get())).dividedBy(amount));
    }

    /** The average now, in the usual unit of its dimension; empty when nothing came with a cost. */
    Optional<UnitPrice> price() {
        if (dimension == null) {
            return Optional.empty();
        }
        Unit unit = ItemMeasure.large(dimension);
        return average.map(each -> {
            BigDecimal rounded = each.times(unit.inBase())
                    .toDecimal(PLACES, RoundingMode.HALF_UP)
                    .stripTrailingZeros();
            return new UnitPrice(rounded.setScale(Math.max(FEWEST_PLACES, rounded.scale())), Quantity.of(1, unit));
        });
    }
}
