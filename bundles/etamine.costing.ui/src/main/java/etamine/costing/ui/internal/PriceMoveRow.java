package etamine.costing.ui.internal;

import etamine.costing.Moved;
import java.math.BigDecimal;

/**
 * A price that moved.
 *
 * @param move the move
 * @param name the item's name
 * @param day the day in words
 * @param key which of all moves
 */
record PriceMoveRow(Moved.PriceMove move, String name, String day, String key) {

    String item() {
        return move.item();
    }

    String fromText() {
        return Figures.price(move.from());
    }

    String toText() {
        return Figures.price(move.to());
    }

    String percentText() {
        return move.percent().map(Figures::percentChange).orElse(Figures.NONE);
    }

    BigDecimal percent() {
        return move.percent().orElse(BigDecimal.ZERO);
    }

    boolean dearer() {
        return percent().signum() > 0;
    }
}
