package etamine.ordering.ui.internal;

import etamine.kitchen.order.OrderLine;

/**
 * A line of the order shown.
 *
 * @param order the order's number
 * @param line the line
 * @param name the item's name
 */
record LineRow(String order, OrderLine line, String name) {

    /** What tells lines of one order apart. */
    String key() {
        return line.item() + "/" + line.code() + "/" + line.pack();
    }

    String code() {
        return line.code();
    }

    long packs() {
        return line.packs();
    }

    String packsText() {
        return String.valueOf(line.packs());
    }

    String pack() {
        return line.pack().toString();
    }

    String price() {
        return line.packPrice().rounded().toString();
    }

    String amount() {
        return line.amount().toString();
    }

    /** The first reason. */
    String why() {
        return line.why().isEmpty() ? "" : line.why().get(0);
    }
}
