package etamine.ordering.ui.internal;

import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.supply.Catalogue;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import etamine.widgets.Choice;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the modules around know at the moment.
 *
 * @param kitchen the house
 * @param items asks for the list of items
 * @param catalogue asks for the catalogue
 */
record Around(
        Kitchen kitchen,
        java.util.function.Supplier<Optional<Items>> items,
        java.util.function.Supplier<Optional<Catalogue>> catalogue) {

    String itemName(String id) {
        return items.get().map(known -> known.name(id)).orElse(id);
    }

    String supplierName(String id) {
        return catalogue
                .get()
                .flatMap(known -> Optional.ofNullable(known.suppliers().get(id)))
                .map(Supplier::name)
                .orElse(id);
    }

    /** The items to choose from, by name; none without a list of items. */
    List<Choice> itemChoices() {
        return items.get()
                .map(known -> known.all().values().stream()
                        .sorted(Comparator.comparing(Item::name))
                        .map(item -> new Choice(item.id(), item.name()))
                        .toList())
                .orElse(List.of());
    }

    /** What a supplier offers on a day, by article number. */
    List<Offer> offers(String supplier, LocalDate day) {
        return catalogue
                .get()
                .map(known -> known.offers(day).stream()
                        .filter(offer -> offer.supplier().equals(supplier))
                        .sorted(Comparator.comparing(offer -> itemName(offer.item())))
                        .toList())
                .orElse(List.of());
    }
}
