package etamine.kitchen.recipe;

/** What a recipe is for. */
public enum Kind {
    /** Part of a plate, or anything made to be used in another recipe. */
    COMPONENT,
    /** What the guest receives. */
    PLATE,
    /** Something taken apart into several things. */
    BREAKDOWN,
    /** A drink poured for the guest. */
    DRINK
}
