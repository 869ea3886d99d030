package etamine.measures;

/** Pounds and ounces; spoons, cups, quarts and gallons. */
final class UsText {
    private static final Ratio QUARTER = Ratio.of(1, 4);
    private static final Ratio HALF = Ratio.of(1, 2);
    private static final Ratio EIGHTH = Ratio.of(1, 8);

    private UsText() {}

    /** Quarter ounces below a pound, half ounces to 5 lb, ounces to 25 lb, then quarter pounds. */
    static String mass(Quantity quantity) {
        Ratio ounces = quantity.in(Unit.OZ).amount();
        if (ounces.compareTo(QUARTER) < 0) {
            return MetricText.of(quantity, Unit.G, Unit.KG);
        }
        if (ounces.compareTo(Ratio.of(400)) >= 0) {
            return Fractions.text(Fractions.nearest(quantity.in(Unit.LB).amount(), QUARTER)) + " lb";
        }
        Ratio step = ounces.compareTo(Ratio.of(16)) < 0 ? QUARTER : ounces.compareTo(Ratio.of(80)) < 0 ? HALF : Ratio.ONE;
        return inTwo(Fractions.nearest(ounces, step), 16, Unit.LB, Unit.OZ);
    }

    /** The largest measure that fits, with the next smaller one for the rest. */
    static String volume(Quantity quantity) {
        if (quantity.unit().equals(Unit.FLOZ) && Fractions.usual(quantity.amount())) {
            return Fractions.text(quantity.amount()) + " floz";
        }
        Ratio teaspoons = quantity.in(Unit.TSP).amount();
        if (teaspoons.compareTo(Ratio.of(1, 16)) < 0) {
            return MetricText.of(quantity, Unit.ML, Unit.L);
        }
        if (teaspoons.compareTo(Ratio.of(12)) < 0) {
            return spoons(teaspoons);
        }
        Ratio cups = quantity.in(Unit.CUP).amount();
        if (cups.compareTo(Ratio.of(4)) < 0) {
            return cups(cups);
        }
        if (cups.compareTo(Ratio.of(16)) < 0) {
            return inTwo(Fractions.nearest(cups, QUARTER), 4, Unit.QT, Unit.CUP);
        }
        return inTwo(Fractions.nearest(quantity.in(Unit.QT).amount(), QUARTER), 4, Unit.GAL, Unit.QT);
    }

    private static String spoons(Ratio teaspoons) {
        Ratio rounded = teaspoons.compareTo(Ratio.ONE) < 0
                ? Fractions.nearest(teaspoons).max(EIGHTH)
                : Fractions.nearest(teaspoons, QUARTER);
        return rounded.compareTo(Ratio.of(12)) >= 0 ? "1/4 cup" : inTwo(rounded, 3, Unit.TBSP, Unit.TSP);
    }

    private static String cups(Ratio cups) {
        Ratio rounded = Fractions.nearest(cups);
        Ratio fault = rounded.minus(cups).abs().dividedBy(cups);
        if (fault.compareTo(Ratio.of(1, 32)) <= 0) {
            return rounded.compareTo(Ratio.of(4)) >= 0 ? "1 qt" : Fractions.text(rounded) + " cup";
        }
        Ratio tablespoons = Fractions.nearest(cups.times(Ratio.of(16)), HALF);
        Ratio quarters = Ratio.of(tablespoons.dividedBy(Ratio.of(4)).floor());
        Ratio rest = tablespoons.minus(quarters.times(Ratio.of(4)));
        String whole = Fractions.text(quarters.times(QUARTER)) + " cup";
        return rest.isZero() ? whole : whole + " " + Fractions.text(rest) + " tbsp";
    }

    /** Halves of the large unit as such, else the large unit and the rest in the small one. */
    private static String inTwo(Ratio small, long each, Unit large, Unit rest) {
        Ratio inLarge = small.dividedBy(Ratio.of(each));
        boolean half = large != Unit.LB && inLarge.times(Ratio.of(2)).isWhole();
        if (inLarge.isWhole() || half && inLarge.compareTo(Ratio.ONE) > 0) {
            return Fractions.text(inLarge) + " " + large;
        }
        long whole = inLarge.floor();
        Ratio left = small.minus(Ratio.of(whole * each));
        String remainder = Fractions.text(left) + " " + rest;
        return whole == 0 ? remainder : whole + " " + large + " " + remainder;
    }
}
