package etamine.recipes;

/** How a recipe or item stands to one group of a list, the most pressing first. */
public enum AllergenState {
    /** Something in it contains it. */
    CONTAINS("contains"),
    /** Something in it may contain it through handling. */
    MAY_CONTAIN("may contain"),
    /** Nobody has established whether anything in it does. */
    UNKNOWN("unknown"),
    /** It is there, in an amount that the list allows without declaring. */
    BELOW("below the limit"),
    /** It is known of everything in it that none is listed. */
    NONE("none listed");

    private final String words;

    AllergenState(String words) {
        this.words = words;
    }

    /** As people read it. */
    public String inWords() {
        return words;
    }
}
