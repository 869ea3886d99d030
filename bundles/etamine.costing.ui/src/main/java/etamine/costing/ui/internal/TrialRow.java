package etamine.costing.ui.internal;

import etamine.costing.Trial;
import etamine.measures.Money;
import java.math.BigDecimal;

/**
 * One plate as the book has it and as what is tried would have it.
 *
 * @param name its name
 * @param plate both sets of figures
 */
record TrialRow(String name, Trial.Plate plate) {

    String id() {
        return plate.recipe();
    }

    String costText() {
        String figures = Figures.both(
                Figures.money(plate.now().cost()), Figures.money(plate.then().cost()));
        return (plate.lowerBound() ? "at least " : "") + figures;
    }

    String changeText() {
        return plate.moved() ? Figures.change(plate.change()) : "";
    }

    String percentText() {
        return Figures.both(
                plate.now().foodCostPercent().map(Figures::percent).orElse(Figures.NONE),
                plate.then().foodCostPercent().map(Figures::percent).orElse(Figures.NONE));
    }

    String contributionText() {
        return Figures.both(
                Figures.money(plate.now().contribution()),
                Figures.money(plate.then().contribution()));
    }

    Money change() {
        return plate.change();
    }

    BigDecimal percentThen() {
        return plate.then().foodCostPercent().orElse(BigDecimal.ZERO);
    }

    /** Whether what is tried takes more of the price than the target allows. */
    boolean over() {
        return plate.then().overTarget();
    }

    /** Whether it is over only because of what is tried. */
    boolean newlyOver() {
        return over() && !plate.now().overTarget();
    }
}
