package etamine.catalogue.internal;

import etamine.base.Subject;
import etamine.kitchen.find.Finder;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Finds suppliers by name, and offers by article number or by the item they are for. */
@Component
public final class CatalogueFinder implements Finder {
    private final Shelves shelves;
    private final LiveCatalogue catalogue;

    /** Looks through what the catalogue shows. */
    @Activate
    public CatalogueFinder(@Reference Shelves shelves, @Reference LiveCatalogue catalogue) {
        this.shelves = shelves;
        this.catalogue = catalogue;
    }

    @Override
    public List<Found> find(String text, int atMost) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        if (wanted.isEmpty()) {
            return List.of();
        }
        Map<String, Supplier> suppliers = catalogue.suppliers();
        Stream<Found> bySupplier = suppliers.values().stream()
                .filter(supplier -> has(supplier.name(), wanted) || has(supplier.id(), wanted))
                .map(supplier -> new Found(new Subject("supplier", supplier.id()), supplier.name(), "supplier"));
        Stream<Found> byOffer = shelves.offers().entrySet().stream()
                .filter(entry -> matches(entry.getValue(), wanted))
                .map(entry -> found(entry.getKey(), entry.getValue(), suppliers));
        return Stream.concat(bySupplier, byOffer).limit(atMost).toList();
    }

    private boolean matches(Offer offer, String wanted) {
        return has(offer.code(), wanted)
                || !offer.gtin().isEmpty() && offer.gtin().startsWith(wanted)
                || has(offer.item(), wanted)
                || has(catalogue.name(offer.item()), wanted);
    }

    private Found found(String id, Offer offer, Map<String, Supplier> suppliers) {
        Supplier supplier = suppliers.get(offer.supplier());
        String from = supplier == null ? offer.supplier() : supplier.name();
        String hint = "offer of " + from + (offer.code().isEmpty() ? "" : ", " + offer.code()) + ", " + offer.pack();
        return new Found(new Subject("offer", id), catalogue.name(offer.item()), hint);
    }

    private static boolean has(String text, String wanted) {
        return text.toLowerCase(Locale.ROOT).contains(wanted);
    }
}
