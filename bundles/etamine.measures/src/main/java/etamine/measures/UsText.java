package etamine.measures;

/** Ounces and pounds; spoons, cups, quarts and gallons, rounded to what scales and measures show. */
final class UsText {
    private static final Ratio EIGHTH = Ratio.of(1, 8);
    private static final Ratio QUARTER = Ratio.of(1, 4);
    private static final Ratio HALF = Ratio.of(1, 2);
    private static final Ratio THREE = Ratio.of(3);
    private static final Ratio FOUR = Ratio.of(4);
    private static final Ratio SIXTEEN = Ratio.of(16);
    private static final Ratio FIVE_POUNDS = Ratio.of(80);
    private static final Ratio TWENTY_FIVE_POUNDS = Ratio.of(400);
    private static final Ratio CLOSE = Ratio.of(1, 32);

    private UsText() {}

    /** Grams below an ounce unless it is an even fraction of one; quarter pounds from 25 lb. */
    static String mass(Quantity quantity) {
        Ratio ounces = quantity.in(Unit.OZ).amount();
        boolean measured = ounces.compareTo(Ratio.ONE) >= 0
                || ounces.compareTo(EIGHTH) >= 0
                        && Fractions.nearest(ounces, EIGHTH).equals(ounces);
        if (!measured) {
            return MetricText.of(quantity, Unit.G, Unit.KG);
        }
        if (ounces.compareTo(TWENTY_FIVE_POUNDS) >= 0) {
            return Fractions.text(Fractions.nearest(quantity.in(Unit.LB).amount(), QUARTER)) + " lb";
        }
        return inTwo(Fractions.nearest(ounces, ounceStep(ounces)), SIXTEEN, Unit.LB, Unit.OZ);
    }

    private static Ratio ounceStep(Ratio ounces) {
        if (ounces.compareTo(FOUR) < 0) {
            return EIGHTH;
        }
        if (ounces.compareTo(SIXTEEN) < 0) {
            return QUARTER;
        }
        return ounces.compareTo(FIVE_POUNDS) < 0 ? HALF : Ratio.ONE;
    }

    /** The largest measure that fits, with the next smaller one for the rest; even fluid ounces stay as written. */
    static String volume(Quantity quantity) {
        if (quantity.unit().equals(Unit.FLOZ) && Fractions.usual(quantity.amount())) {
            return Fractions.text(quantity.amount()) + " " + Unit.FLOZ;
        }
        Ratio teaspoons = quantity.in(Unit.TSP).amount();
        if (teaspoons.compareTo(EIGHTH) < 0) {
            return MetricText.of(quantity, Unit.ML, Unit.L);
        }
        Ratio spoons = Fractions.nearest(teaspoons, teaspoons.compareTo(THREE) < 0 ? EIGHTH : QUARTER);
        if (spoons.compareTo(Ratio.of(12)) < 0) {
            return inTwo(spoons, THREE, Unit.TBSP, Unit.TSP);
        }
        return large(quantity.in(Unit.CUP).amount());
    }

    private static String large(Ratio cups) {
        Ratio quarters = Fractions.nearest(cups, QUARTER);
        if (quarters.compareTo(FOUR) < 0) {
            return cups(cups);
        }
        if (quarters.compareTo(SIXTEEN) < 0) {
            return inTwo(quarters, FOUR, Unit.QT, Unit.CUP);
        }
        return inTwo(Fractions.nearest(cups.dividedBy(FOUR), QUARTER), FOUR, Unit.GAL, Unit.QT);
    }

    private static String cups(Ratio cups) {
        Ratio rounded = Fractions.nearest(cups);
        if (rounded.minus(cups).abs().compareTo(cups.times(CLOSE)) <= 0) {
            return Fractions.text(rounded) + " " + Unit.CUP;
        }
        Ratio tablespoons = Fractions.nearest(cups.times(SIXTEEN), HALF);
        Ratio quarters = tablespoons.dividedBy(FOUR).wholePart();
        Ratio rest = tablespoons.minus(quarters.times(FOUR));
        String measured = Fractions.text(quarters.times(QUARTER)) + " " + Unit.CUP;
        return rest.isZero() ? measured : measured + " " + Fractions.text(rest) + " " + Unit.TBSP;
    }

    /** Whole numbers and, of measures, halves in the large unit; else the rest in the small one. */
    private static String inTwo(Ratio small, Ratio each, Unit large, Unit rest) {
        Ratio inLarge = small.dividedBy(each);
        boolean halves = large != Unit.LB
                && inLarge.compareTo(Ratio.ONE) > 0
                && inLarge.times(Ratio.of(2)).isWhole();
        if (inLarge.isWhole() || halves) {
            return Fractions.text(inLarge) + " " + large;
        }
        Ratio whole = inLarge.wholePart();
        String remainder = Fractions.text(small.minus(whole.times(each))) + " " + rest;
        return whole.isZero() ? remainder : whole + " " + large + " " + remainder;
    }
}
