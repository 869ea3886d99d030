package etamine.recipes;

import java.util.List;

/**
 * One thing that differs between two revisions of a recipe.
 *
 * @param what how it differs
 * @param where what it concerns, such as {@code Celeriac} or {@code Step simmer}
 * @param before as it was; empty for what came in
 * @param after as it is; empty for what went
 * @param words the text word by word where a text was changed, else empty
 */
public record Difference(What what, String where, String before, String after, List<Words> words) {

    /** Copies the list. */
    public Difference {
        words = List.copyOf(words);
    }

    /** How something differs. */
    public enum What {
        /** It came in. */
        ADDED,
        /** It went. */
        REMOVED,
        /** Its amount changed. */
        AMOUNT,
        /** It was worded otherwise. */
        TEXT,
        /** Something else about it changed. */
        CHANGED,
        /** It stands elsewhere. */
        MOVED
    }

    /**
     * A run of words.
     *
     * @param kind whether both have it
     * @param text the words with the blanks between them
     */
    public record Words(Kind kind, String text) {

        /** Which of the two texts has the words. */
        public enum Kind {
            /** Both. */
            SAME,
            /** Only the older. */
            REMOVED,
            /** Only the newer. */
            ADDED
        }
    }
}
