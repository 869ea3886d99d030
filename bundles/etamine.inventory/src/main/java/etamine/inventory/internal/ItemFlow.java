package etamine.inventory.internal;

import etamine.inventory.internal.LedgerFlows.Moved;
import etamine.inventory.internal.Valuer.Worth;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.StockFlow;
import etamine.kitchen.stock.StockFlow.Amount;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts one item's flow together; used once. What moved at no known cost is worth the average of the whole time. */
final class ItemFlow {
    private final Valuer valuer;
    private final Currency currency;
    private final Map<MovementKind, Quantity> amounts = new EnumMap<>(MovementKind.class);
    private final Map<MovementKind, Ratio> worth = new EnumMap<>(MovementKind.class);
    private final Map<MovementKind, Quantity> unvalued = new EnumMap<>(MovementKind.class);
    private boolean whole = true;

    ItemFlow(Valuer valuer, Currency currency) {
        this.valuer = valuer;
        this.currency = currency;
    }

    StockFlow of(@Nullable ItemStock before, @Nullable ItemStock after, List<Moved> moved) {
        Unit unit = unit(before, after, moved);
        Amount opening = there(before, unit);
        Amount closing = there(after, unit);
        moved.forEach(this::take);
        Optional<Ratio> average = average(opening);
        Map<MovementKind, Amount> doors = new EnumMap<>(MovementKind.class);
        amounts.forEach((door, quantity) -> doors.put(door, new Amount(quantity, value(door, average))));
        Amount entered = doors.remove(MovementKind.OPENING);
        return new StockFlow(
                valuer.measure().id(), entered == null ? opening : opening.plus(entered), closing, doors, whole);
    }

    private Unit unit(@Nullable ItemStock before, @Nullable ItemStock after, List<Moved> moved) {
        if (before != null) {
            return before.level().onHand().unit();
        }
        return after != null
                ? after.level().onHand().unit()
                : valuer.measure().countIn(Quantity.fromBase(moved.get(0).dimension(), 1));
    }

    private Amount there(@Nullable ItemStock stock, Unit unit) {
        if (stock == null || !stock.level().onHand().unit().isLike(unit)) {
            whole &= stock == null;
            return new Amount(Quantity.zero(unit), Optional.of(Money.zero(currency)));
        }
        whole &= stock.apart().isEmpty();
        return new Amount(stock.level().onHand().in(unit), stock.level().value());
    }

    private void take(Moved moved) {
        MovementKind door = Draft.kind(moved.door());
        Optional<Quantity> counted = valuer.measure().counted(Quantity.fromBase(moved.dimension(), moved.amount()));
        if (counted.isEmpty() || door == MovementKind.MOVED) {
            whole &= counted.isPresent();
            return;
        }
        amounts.merge(door, counted.get(), Quantity::plus);
        Optional<Ratio> value = LotKey.price(moved.cost())
                .flatMap(price ->
                        valuer.measure().like(counted.get(), price.per().unit()).map(price::cost));
        value.ifPresent(known -> worth.merge(door, known, Ratio::plus));
        if (value.isEmpty()) {
            unvalued.merge(door, counted.get(), Quantity::plus);
        }
    }

    /** What one count unit of all that was there in that time cost; empty when no cost is known. */
    private Optional<Ratio> average(Amount opening) {
        Ratio value = opening.value().map(Money::toRatio).orElse(Ratio.ZERO);
        Ratio quantity =
                opening.value().isPresent() ? opening.quantity().amount().max(Ratio.ZERO) : Ratio.ZERO;
        for (Map.Entry<MovementKind, Ratio> door : worth.entrySet()) {
            if (Draft.direction(door.getKey()) > 0) {
                Quantity without = Optional.ofNullable(unvalued.get(door.getKey()))
                        .orElseGet(() -> Quantity.zero(opening.quantity().unit()));
                value = value.plus(door.getValue());
                quantity = quantity.plus(amounts.get(door.getKey())
                        .minus(without)
                        .in(opening.quantity().unit())
                        .amount());
            }
        }
        return quantity.signum() > 0 && value.signum() > 0 ? Optional.of(value.dividedBy(quantity)) : Optional.empty();
    }

    private Optional<Money> value(MovementKind door, Optional<Ratio> average) {
        Optional<Ratio> known = Optional.ofNullable(worth.get(door));
        Optional<Ratio> rest = Optional.ofNullable(unvalued.get(door))
                .flatMap(quantity -> average.map(each -> each.times(quantity.amount()))
                        .or(() -> valuer.worth(quantity, Optional.empty()).map(Worth::amount)));
        return known.isEmpty() && rest.isEmpty()
                ? Optional.empty()
                : Optional.of(Money.of(known.orElse(Ratio.ZERO).plus(rest.orElse(Ratio.ZERO)), currency));
    }
}
