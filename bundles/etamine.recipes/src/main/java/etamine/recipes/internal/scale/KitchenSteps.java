package etamine.recipes.internal.scale;

import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.Practical;
import java.util.List;

/**
 * Rounds amounts to what a kitchen can measure: scales in steps that grow with the load, spoons in quarters, cups in
 * quarters and thirds, pieces in halves. Steps are such that few amounts are off by more than a fortieth; nothing is ever
 * rounded to nothing. The steps are common practice of this trade.
 */
final class KitchenSteps {
    private static final Ratio HALF = Ratio.of(1, 2);
    private static final Ratio THIRD = Ratio.of(1, 3);
    private static final Ratio QUARTER = Ratio.of(1, 4);
    private static final Ratio EIGHTH = Ratio.of(1, 8);
    private static final Ratio CLOSE = Ratio.of(1, 25);

    /** Up to where a step holds, in the small unit. */
    private record Step(Ratio below, Ratio step) {}

    /** For grams and millilitres. */
    private static final List<Step> METRIC = List.of(
            step("0.2", "0.01"),
            step("1", "0.05"),
            step("5", "0.1"),
            step("20", "0.5"),
            step("100", "1"),
            step("200", "5"),
            step("2000", "10"),
            step("10000", "50"),
            step("100000", "100"));

    /** Less than that nobody weighs; it stays as it is. */
    private static final Ratio LEAST = Ratio.of(1, 20);

    private static final Ratio METRIC_LARGEST = Ratio.of(1000);

    /** For ounces; the largest step is a quarter of a pound. */
    private static final List<Step> OUNCES =
            List.of(step("4", "1/8"), step("16", "1/4"), step("80", "1/2"), step("400", "1"));

    private static final Ratio OUNCES_LARGEST = Ratio.of(4);

    private KitchenSteps() {}

    static Practical of(Quantity exact) {
        Quantity size = exact.signum() < 0 ? exact.negate() : exact;
        Quantity measured = size.isZero() || usual(size) ? size : measured(size);
        return new Practical(exact, exact.signum() < 0 ? measured.negate() : measured);
    }

    /** Amounts in fractions that spoons and cups come in need no other; the metric units are never written in them. */
    private static boolean usual(Quantity quantity) {
        return switch (quantity.unit().system()) {
            case US, METRIC_KITCHEN, IMPERIAL ->
                quantity.unit().dimension() == Dimension.VOLUME
                        && quantity.amount().compareTo(Ratio.of(16)) <= 0
                        && (quantity.amount().times(Ratio.of(4)).isWhole()
                                || quantity.amount().times(Ratio.of(3)).isWhole());
            default -> false;
        };
    }

    private static Quantity measured(Quantity size) {
        return switch (size.unit().system()) {
            case METRIC -> metric(size);
            case US ->
                size.unit().dimension() == Dimension.MASS ? ounces(size) : spoons(size, Unit.TSP, Unit.TBSP, Unit.CUP);
            case METRIC_KITCHEN -> spoons(size, Unit.TSP_M, Unit.TBSP_M, Unit.CUP_M);
            case IMPERIAL -> quarters(size, Unit.FLOZ_IMP);
            case COUNT, OWN -> pieces(size);
        };
    }

    private static Quantity metric(Quantity size) {
        boolean mass = size.unit().dimension() == Dimension.MASS;
        Unit small = mass ? Unit.G : Unit.ML;
        if (size.in(small).amount().compareTo(LEAST) < 0) {
            return size;
        }
        Quantity rounded = stepped(size.in(small), METRIC, METRIC_LARGEST);
        boolean large = rounded.amount().compareTo(Ratio.of(1000)) >= 0;
        return large ? rounded.in(mass ? Unit.KG : Unit.L) : rounded;
    }

    private static Quantity ounces(Quantity size) {
        Quantity rounded = stepped(size.in(Unit.OZ), OUNCES, OUNCES_LARGEST);
        return rounded.amount().compareTo(Ratio.of(16)) >= 0 ? rounded.in(Unit.LB) : rounded;
    }

    /** Quarter spoons below a tablespoon, half tablespoons below a quarter cup, then cups where they come close. */
    private static Quantity spoons(Quantity size, Unit tsp, Unit tbsp, Unit cup) {
        Ratio teaspoons = size.in(tsp).amount();
        if (teaspoons.compareTo(Ratio.of(3)) < 0) {
            return nearest(size.in(tsp), teaspoons.compareTo(HALF) < 0 ? EIGHTH : QUARTER);
        }
        Quantity cups = size.in(cup);
        if (cups.amount().compareTo(QUARTER) < 0) {
            return nearest(size.in(tbsp), HALF);
        }
        Quantity quarters = nearest(cups, QUARTER);
        Quantity thirds = nearest(cups, THIRD);
        Quantity best = off(thirds, size).compareTo(off(quarters, size)) < 0 ? thirds : quarters;
        boolean close = off(best, size).compareTo(CLOSE) <= 0;
        return close ? best : nearest(size.in(tbsp), HALF);
    }

    private static Quantity quarters(Quantity size, Unit small) {
        Quantity own = nearest(size, QUARTER);
        return off(own, size).compareTo(CLOSE) <= 0 ? own : nearest(size.in(small), QUARTER);
    }

    private static Quantity pieces(Quantity size) {
        Quantity single = size.unit().equals(Unit.DOZEN) ? size.in(Unit.EA) : size;
        if (single.amount().compareTo(Ratio.of(10)) >= 0) {
            return nearest(single, Ratio.ONE);
        }
        return nearest(single, single.amount().compareTo(HALF) < 0 ? QUARTER : HALF);
    }

    private static Quantity stepped(Quantity size, List<Step> steps, Ratio largest) {
        Ratio step = steps.stream()
                .filter(each -> size.amount().compareTo(each.below) < 0)
                .map(Step::step)
                .findFirst()
                .orElse(largest);
        return nearest(size, step);
    }

    /** The nearest multiple of a step, the larger of two equally near; what would become nothing stays exact. */
    private static Quantity nearest(Quantity size, Ratio step) {
        Ratio times = size.amount().dividedBy(step).plus(HALF);
        Ratio whole = Ratio.of(times.numerator().divide(times.denominator()), java.math.BigInteger.ONE);
        return whole.isZero() ? size : new Quantity(whole.times(step), size.unit());
    }

    private static Ratio off(Quantity measured, Quantity exact) {
        return measured.minus(exact).dividedBy(exact).abs();
    }

    private static Step step(String below, String step) {
        return new Step(Ratio.parse(below), Ratio.parse(step));
    }
}
