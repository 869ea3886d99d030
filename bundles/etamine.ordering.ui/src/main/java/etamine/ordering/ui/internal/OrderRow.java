package etamine.ordering.ui.internal;

import etamine.kitchen.order.OrderState;

/**
 * An order in the list.
 *
 * @param id its number
 * @param supplier the supplier's name
 * @param deliver the delivery day in words
 * @param closes for a draft how long it can still be sent; for others empty
 * @param urgent whether it closes within three hours or has closed
 * @param state how far it is
 * @param lines how many lines
 * @param goods value of goods
 * @param fee delivery fee
 * @param order its place when sorted: drafts first, the earliest first
 */
record OrderRow(
        String id,
        String supplier,
        String deliver,
        String closes,
        boolean urgent,
        OrderState state,
        int lines,
        String goods,
        String fee,
        String order) {

    String stateText() {
        return switch (state) {
            case DRAFT -> "draft";
            case SENT -> "sent";
            case RECEIVED -> "received";
            case CANCELLED -> "called off";
        };
    }

    String linesText() {
        return String.valueOf(lines);
    }
}
