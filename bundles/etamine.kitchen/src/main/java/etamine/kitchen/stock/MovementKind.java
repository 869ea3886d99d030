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
    /** Eaten by staff. */
    STAFF,
    /** Given to guests without being charged: promotions, tastings, what goes on the house. */
    GIVEN,
    /** Sold as it is rather than on a plate: fat to a renderer, goods to staff. */
    RESOLD,
    /** Came from elsewhere in the house, such as a bottle of the bar for cooking: a transfer in. */
    BROUGHT,
    /** Went elsewhere in the house, such as lemons to the bar: a transfer out. */
    SENT,
    /** The difference a count found. */
    COUNTED
}
