package etamine.inventory.ui.internal;

import etamine.inventory.StockLine;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * One line of the stock list, as text and as what it sorts by.
 *
 * @param item the item
 * @param name its name
 * @param onHand what is there
 * @param onOrder what is on its way; empty for nothing
 * @param par the level of the day; empty when none is set
 * @param percent on hand over par as text; empty without par
 * @param shortBy what is missing; empty for nothing
 * @param value what it is worth, with a mark where a part has no price
 * @param nextUseBy the earliest marked day; empty when none
 * @param due whether that day is today or past
 * @param line the figures behind it
 */
record StockRow(
        String item,
        String name,
        String onHand,
        String onOrder,
        String par,
        String percent,
        String shortBy,
        String value,
        String nextUseBy,
        boolean due,
        StockLine line) {

    int share() {
        return line.percentOfPar().orElse(Integer.MAX_VALUE);
    }

    boolean isShort() {
        return !shortBy.isEmpty();
    }

    boolean negative() {
        return line.onHand().signum() < 0;
    }

    BigDecimal worth() {
        return line.value().map(money -> money.amount()).orElse(BigDecimal.ZERO);
    }

    LocalDate day() {
        return line.nextUseBy().orElse(LocalDate.MAX);
    }
}
