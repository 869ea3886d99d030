package etamine.measures;

/** The family of units in which a kitchen reads its amounts. */
public enum MeasureStyle {
    /** Grams, kilograms, millilitres and litres. */
    METRIC,
    /** Ounces and pounds, spoons, cups, quarts and gallons. */
    US
}
