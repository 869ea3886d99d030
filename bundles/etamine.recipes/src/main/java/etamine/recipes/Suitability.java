package etamine.recipes;

/** Whether something suits a diet. */
public enum Suitability {
    /** Everything in it is said to suit. */
    SUITS("suits"),
    /** Something in it does not suit. */
    UNSUITED("does not suit"),
    /** Something in it has not been said to suit or not. */
    UNKNOWN("unknown");

    private final String words;

    Suitability(String words) {
        this.words = words;
    }

    /** As people read it. */
    public String inWords() {
        return words;
    }
}
