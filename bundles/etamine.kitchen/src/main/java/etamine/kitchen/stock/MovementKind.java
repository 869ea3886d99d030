package etamine.kitchen.stock;

/** Why stock moved. Each leaves or enters by its own door. */
public enum MovementKind {
    /** There when the book was opened. */
    OPENING,
    /** Came from a supplier. */
    RECEIVED,
    /** Went into something. */
    USED,
    /** Came out of a recipe. */
    MADE,
    /** Left on a plate. */
    SOLD,
    /** Thrown away. */
    WASTED,
    /** Changed its place: one entry out, one in. */
    MOVED,
    /** Went back to the supplier. */
    RETURNED,
    /** The difference a count found. */
    COUNTED
}
