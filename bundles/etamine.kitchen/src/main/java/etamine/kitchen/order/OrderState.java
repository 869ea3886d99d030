package etamine.kitchen.order;

/** How far an order has come. */
public enum OrderState {
    /** Being put together. */
    DRAFT,
    /** Sent to the supplier. */
    SENT,
    /** Received, wholly or in part. */
    RECEIVED,
    /** Called off. */
    CANCELLED
}
