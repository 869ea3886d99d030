package etamine.ordering.internal;

import etamine.documents.Documents;
import etamine.kitchen.covers.Diary;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.stock.Stock;
import etamine.kitchen.supply.Catalogue;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** The services of other modules, each of which may be missing, come and go. */
@Component(service = Neighbours.class)
public final class Neighbours {
    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Items items;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Recipes recipes;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Diary diary;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Stock stock;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Catalogue catalogue;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Documents documents;

    Optional<Items> items() {
        return Optional.ofNullable(items);
    }

    Optional<Recipes> recipes() {
        return Optional.ofNullable(recipes);
    }

    Optional<Diary> diary() {
        return Optional.ofNullable(diary);
    }

    Optional<Stock> stock() {
        return Optional.ofNullable(stock);
    }

    Optional<Catalogue> catalogue() {
        return Optional.ofNullable(catalogue);
    }

    Optional<Documents> documents() {
        return Optional.ofNullable(documents);
    }

    /** The item, when it is known. */
    Optional<Item> item(String id) {
        return items().flatMap(known -> known.find(id));
    }

    /** The item's name, or its id. */
    String itemName(String id) {
        return item(id).map(Item::name).orElse(id);
    }

    /** The supplier's name, or its id. */
    String supplierName(String id) {
        return catalogue()
                .flatMap(known -> Optional.ofNullable(known.suppliers().get(id)))
                .map(supplier -> supplier.name())
                .orElse(id);
    }

    /** Whether some recipe makes the item. */
    boolean isMade(String id) {
        return recipes().flatMap(known -> known.maker(id)).isPresent();
    }
}
