package etamine.checks.demo;

import etamine.measures.Quantity;
import java.util.List;

/** What happens once: a tasting, a stall at the market, butter for a cook. All on days when the kitchen was open. */
final class UnusualDays {
    static final List<Once> ALL = List.of(
            new Once(26, "resold", "butter", "2 kg", "to a cook, at cost"),
            new Once(19, "given", "white-wine", "2250 ml", "tasting for the street"),
            new Once(19, "given", "beetroot", "3 kg", "tasting for the street"),
            new Once(19, "given", "hazelnut-crumb", "150 g", "tasting for the street"),
            new Once(10, "sent", "apple", "4 kg", "to the stall at the market"),
            new Once(10, "sent", "butter", "1 kg", "to the stall at the market"),
            new Once(9, "brought", "dry-cider", "3 l", "from the stall at the market"));

    private UnusualDays() {}

    /**
     * One of them.
     *
     * @param daysAgo how many days before today
     * @param kind as in the exchange form
     * @param item the item
     * @param quantity how much
     * @param reason why
     */
    record Once(int daysAgo, String kind, String item, String quantity, String reason) {
        long base() {
            return Quantity.parse(quantity).toBase();
        }
    }
}
