package etamine.costing.internal.statement;

import etamine.costing.Statement;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.StockFlow;
import etamine.kitchen.stock.StockFlow.Amount;
import etamine.measures.Money;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The steps of a statement from what the shelf did.
 *
 * @param flows by item
 * @param currency of the house
 */
record ShelfFigures(Map<String, StockFlow> flows, Currency currency) {
    private static final List<MovementKind> DOORS = List.of(
            MovementKind.RECEIVED,
            MovementKind.RETURNED,
            MovementKind.BROUGHT,
            MovementKind.SENT,
            MovementKind.RESOLD,
            MovementKind.GIVEN,
            MovementKind.STAFF);

    Statement.Actual actual() {
        return new Statement.Actual(
                total(StockFlow::opening),
                door(MovementKind.RECEIVED).plus(door(MovementKind.RETURNED)),
                total(StockFlow::closing),
                door(MovementKind.BROUGHT),
                door(MovementKind.SENT).negate(),
                door(MovementKind.RESOLD).negate(),
                door(MovementKind.GIVEN).negate(),
                door(MovementKind.STAFF).negate(),
                door(MovementKind.WASTED).negate(),
                door(MovementKind.COUNTED).negate());
    }

    private Money door(MovementKind kind) {
        return total(flow -> flow.by(kind));
    }

    private Money total(Function<StockFlow, Amount> part) {
        return flows.values().stream()
                .flatMap(flow -> part.apply(flow).value().stream())
                .reduce(Money.zero(currency), Money::plus);
    }

    /** Whether anything ever was there or moved. */
    boolean isEmpty() {
        return flows.values().stream()
                .allMatch(flow -> flow.opening().quantity().isZero()
                        && flow.closing().quantity().isZero()
                        && flow.doors().isEmpty());
    }

    /** Items of which something has no value, or cannot be brought to one unit. */
    List<String> doubtful() {
        return flows.values().stream()
                .filter(flow -> !flow.whole()
                        || flow.opening().value().isEmpty()
                        || flow.closing().value().isEmpty()
                        || flow.doors().values().stream()
                                .anyMatch(door -> door.value().isEmpty()))
                .map(StockFlow::item)
                .toList();
    }

    /** What left an item's shelf other than by a door of the statement: opening and what came less closing and those. */
    static Amount used(StockFlow flow) {
        Amount used = flow.opening().plus(flow.closing().negate());
        for (MovementKind door : DOORS) {
            used = used.plus(flow.by(door));
        }
        return used;
    }

    /**
     * How much more of a thing made here has to be made than was sold on plates: what the shelf gained of it, and what left
     * by the doors of the statement; less than zero when the shelf gave some.
     */
    static Amount made(StockFlow flow) {
        return used(flow).negate();
    }
}
