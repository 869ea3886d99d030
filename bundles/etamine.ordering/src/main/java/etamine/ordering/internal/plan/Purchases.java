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
 */
public record Purchases(Map<Slot, List<Purchase>> bySlot, Map<Slot, Money> refused) {

    /** Copies the collections, keeping their order. */
    public Purchases {
        Map<Slot, List<Purchase>> copy = new LinkedHashMap<>();
        bySlot.forEach((slot, purchases) -> copy.put(slot, List.copyOf(purchases)));
        bySlot = copy;
        refused = new LinkedHashMap<>(refused);
    }

    /** All purchases of an item. */
    public List<Purchase> of(ItemModel item) {
        List<Purchase> all = new ArrayList<>();
        bySlot.values()
                .forEach(purchases -> purchases.stream()
                        .filter(purchase -> purchase.item() == item)
                        .forEach(all::add));
        return all;
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
