package etamine.ordering.internal.plan;

import etamine.measures.Money;
import etamine.ordering.internal.plan.SupplierModel.Slot;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a method decided to buy.
 *
 * @param bySlot the purchases of each delivery used, by day and supplier
 * @param refused deliveries that were not used because their order would have stayed below the minimum, and its value
 * @param byItem the same purchases by item id
 */
public record Purchases(
        Map<Slot, List<Purchase>> bySlot, Map<Slot, Money> refused, Map<String, List<Purchase>> byItem) {

    /** Copies the collections, keeping their order. */
    public Purchases {
        bySlot = copy(bySlot);
        refused = new LinkedHashMap<>(refused);
        byItem = copy(byItem);
    }

    /** These purchases, found by item as well as by delivery. */
    public Purchases(Map<Slot, List<Purchase>> bySlot, Map<Slot, Money> refused) {
        this(bySlot, refused, byItem(bySlot));
    }

    private static <K> Map<K, List<Purchase>> copy(Map<K, List<Purchase>> lists) {
        Map<K, List<Purchase>> copy = new LinkedHashMap<>();
        lists.forEach((key, purchases) -> copy.put(key, List.copyOf(purchases)));
        return copy;
    }

    private static Map<String, List<Purchase>> byItem(Map<Slot, List<Purchase>> bySlot) {
        Map<String, List<Purchase>> all = new LinkedHashMap<>();
        bySlot.values()
                .forEach(purchases -> purchases.forEach(
                        purchase -> all.computeIfAbsent(purchase.item().item(), item -> new ArrayList<>())
                                .add(purchase)));
        return all;
    }

    /** All purchases of an item, by day. */
    public List<Purchase> of(ItemModel item) {
        return byItem.getOrDefault(item.item(), List.of());
    }

    /** The value of goods. */
    static Money goods(List<Purchase> purchases, Currency currency) {
        Money goods = Money.zero(currency);
        for (Purchase purchase : purchases) {
            goods = goods.plus(purchase.amount());
        }
        return goods;
    }
}
