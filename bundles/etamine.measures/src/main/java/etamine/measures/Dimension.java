package etamine.measures;

/** What a unit measures. Quantities of different dimensions meet only through an {@link Equivalence}. */
public enum Dimension {
    /** Mass; base unit one milligram. */
    MASS,
    /** Volume; base unit one microlitre. */
    VOLUME,
    /** Number of pieces; base unit one thousandth of a piece. */
    COUNT,
    /** Number of portions of something made; base unit one thousandth of a portion. */
    PORTION,
    /** An ingredient's own unit word, such as bunch or clove; has no base unit and always needs an equivalence. */
    WORD
}
