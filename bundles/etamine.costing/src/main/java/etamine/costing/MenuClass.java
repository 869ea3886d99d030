package etamine.costing;

/** The four classes of Kasavana and Smith (1982): how an item stands by margin and by popularity. */
public enum MenuClass {
    /** High margin, high popularity. */
    STAR,
    /** Low margin, high popularity. */
    PLOWHORSE,
    /** High margin, low popularity. */
    PUZZLE,
    /** Low margin, low popularity. */
    DOG;

    /** The class of an item. */
    public static MenuClass of(boolean highMargin, boolean popular) {
        if (popular) {
            return highMargin ? STAR : PLOWHORSE;
        }
        return highMargin ? PUZZLE : DOG;
    }
}
