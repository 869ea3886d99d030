package etamine.kitchen.allergen;

/** How a list stands to an allergen that belongs to one of its groups. */
public enum Standing {
    /** The list asks to declare it. */
    DECLARED,
    /** The list leaves it to each country. */
    NATIONAL,
    /** The sources of the list do not settle it; it is shown as declared, so that nobody relies on the gap. */
    OPEN,
    /** It is not more than the list allows without declaring. */
    BELOW
}
