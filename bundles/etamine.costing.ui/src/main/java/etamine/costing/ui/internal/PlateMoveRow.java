package etamine.costing.ui.internal;

import etamine.costing.Moved;
import java.math.BigDecimal;

/**
 * A plate whose cost moved.
 *
 * @param move the move
 * @param name the plate's name
 */
record PlateMoveRow(Moved.PlateMove move, String name) {

    String id() {
        return move.recipe();
    }

    String nowText() {
        return (move.lowerBound() ? "at least " : "") + Figures.money(move.now());
    }

    String changeText() {
        return Figures.change(move.change());
    }

    String percentText() {
        return move.foodCostPercent().map(Figures::percent).orElse(Figures.NONE);
    }

    BigDecimal percent() {
        return move.foodCostPercent().orElse(BigDecimal.ZERO);
    }

    /** Empty, or that its recipe is younger than the day asked for. */
    String writtenText(Figures figures) {
        return move.written()
                .map(day -> "as first written on " + figures.day(day))
                .orElse("");
    }
}
