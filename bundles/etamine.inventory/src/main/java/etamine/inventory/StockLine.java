package etamine.inventory;

import etamine.kitchen.stock.Lot;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One item's stock against its par.
 *
 * @param item the item
 * @param name what people call it
 * @param onHand what is there
 * @param onOrder what is on its way, in the same unit
 * @param par the level of the day, in the same unit; empty when none is set or it cannot be converted
 * @param shortBy par less on hand less on order, not less than zero; empty without par
 * @param value what is on hand is worth, unrounded; empty when no cost and no price is known
 * @param valuedBy where the value comes from, in words
 * @param lots what it consists of, first-expiring first
 * @param nextUseBy the earliest marked day
 */
public record StockLine(
        String item,
        String name,
        Quantity onHand,
        Quantity onOrder,
        Optional<Quantity> par,
        Optional<Quantity> shortBy,
        Optional<Money> value,
        String valuedBy,
        List<Lot> lots,
        Optional<LocalDate> nextUseBy) {

    /** Copies the list. */
    public StockLine {
        lots = List.copyOf(lots);
    }

    /** What is on hand over par, in whole percent rounded down; empty without par or with a par of nothing. */
    public Optional<Integer> percentOfPar() {
        return par.filter(level -> !level.isZero())
                .map(level -> (int) onHand.dividedBy(level).times(Ratio.of(100)).floor());
    }
}
