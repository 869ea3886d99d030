package etamine.documents;

/** Where text stands. */
public enum Align {
    /** At the left edge, as words do. */
    LEFT,
    /** In the middle, as marks do. */
    CENTRE,
    /** At the right edge, as figures do. */
    RIGHT
}
