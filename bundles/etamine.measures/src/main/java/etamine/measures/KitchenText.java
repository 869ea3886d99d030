package etamine.measures;

/** Rounds amounts, none below zero, to what a kitchen can measure, and writes them. */
final class KitchenText {
    private KitchenText() {}

    static String of(Quantity quantity, MeasureStyle style) {
        if (quantity.isZero()) {
            return quantity.toString();
        }
        return switch (quantity.unit().dimension()) {
            case MASS -> style == MeasureStyle.US ? UsText.mass(quantity) : MetricText.of(quantity, Unit.G, Unit.KG);
            case VOLUME ->
                style == MeasureStyle.US ? UsText.volume(quantity) : MetricText.of(quantity, Unit.ML, Unit.L);
            case COUNT, PORTION, WORD -> pieces(quantity);
        };
    }

    /** Without rounding: a mixed number where cooks use fractions, else a decimal. */
    static String exact(Ratio amount, Unit unit) {
        boolean fractions = unit.system() != Unit.System.METRIC;
        return (fractions && Fractions.usual(amount) ? Fractions.text(amount) : amount.toString()) + " " + unit;
    }

    private static String pieces(Quantity quantity) {
        Ratio amount = quantity.amount();
        String number = Fractions.usual(amount) ? Fractions.text(amount) : MetricText.within(amount, MetricText.FINE);
        return number + " " + quantity.unit();
    }
}
