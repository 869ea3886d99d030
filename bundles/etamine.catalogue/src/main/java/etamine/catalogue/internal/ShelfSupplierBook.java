package etamine.catalogue.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Explanation;
import etamine.base.Problem;
import etamine.catalogue.RefusedException;
import etamine.catalogue.SupplierBook;
import etamine.kitchen.exchange.EntryMerge;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import etamine.measures.UnitPrice;
import etamine.storage.Transaction;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Edits the shelves, each change over the members that are already there. */
@Component
public final class ShelfSupplierBook implements SupplierBook {
    private static final int WEEKS_AHEAD = 4;

    private final Shelves shelves;
    private final LiveCatalogue catalogue;
    private final Kitchen kitchen;

    /** Edits what the catalogue shows. */
    @Activate
    public ShelfSupplierBook(
            @Reference Shelves shelves, @Reference LiveCatalogue catalogue, @Reference Kitchen kitchen) {
        this.shelves = shelves;
        this.catalogue = catalogue;
        this.kitchen = kitchen;
    }

    @Override
    public Map<String, Supplier> suppliers() {
        return catalogue.suppliers();
    }

    @Override
    public Map<String, Offer> offers() {
        return shelves.offers();
    }

    @Override
    public Set<String> current() {
        return catalogue.offers(kitchen.today()).stream().map(OfferForm::id).collect(Collectors.toSet());
    }

    @Override
    public String idOf(Offer offer) {
        return OfferForm.id(offer);
    }

    @Override
    public Optional<Delivery> next(String supplier) {
        ZonedDateTime now = ZonedDateTime.now(kitchen.clock());
        return catalogue.deliveries(supplier, now, kitchen.today().plusWeeks(WEEKS_AHEAD)).stream()
                .findFirst();
    }

    @Override
    public Optional<UnitPrice> unitPrice(Offer offer) {
        return catalogue.unitPrice(offer);
    }

    @Override
    public Explanation explain(Offer offer) {
        return new OfferStory(offer, catalogue, kitchen.house().currency()).tell();
    }

    @Override
    public List<Problem> problems(Offer offer) {
        return OfferDoubts.of(offer, catalogue);
    }

    @Override
    public long supplierRevision(String id) {
        return shelves.supplierRevision(id);
    }

    @Override
    public long offerRevision(String id) {
        return shelves.offerRevision(id);
    }

    @Override
    public void save(Supplier supplier, long expected) {
        refuseId(supplier.id());
        refuseIf(supplier.name().isBlank(), "Give the supplier a name.");
        shelves.book().write("Save supplier " + supplier.name(), transaction -> {
            ObjectNode stored = stored(transaction, Shelves.SUPPLIERS, supplier.id());
            ObjectNode before = SupplierForm.read(new EntryReader(stored)).write(Members.empty());
            ObjectNode after = SupplierForm.of(supplier).write(Members.empty());
            String json = merged(stored, before, after).toString();
            return transaction.save(Shelves.SUPPLIERS, supplier.id(), expected, json);
        });
    }

    @Override
    public void save(Offer offer, String formerId, long expected) {
        String id = OfferForm.id(offer);
        refuse(offer);
        refuseIf(
                !id.equals(formerId) && shelves.offers().containsKey(id),
                "There is already an offer " + id + "; change that one or give this another article number.");
        shelves.book().write("Save offer " + id, transaction -> {
            ObjectNode stored = stored(transaction, Shelves.OFFERS, formerId);
            ObjectNode before = OfferForm.write(OfferForm.read(new EntryReader(stored)), Members.empty());
            ObjectNode after = OfferForm.write(offer, Members.empty());
            String json = merged(stored, before, after).toString();
            if (formerId.isEmpty() || formerId.equals(id)) {
                return transaction.save(Shelves.OFFERS, id, expected, json);
            }
            transaction.remove(Shelves.OFFERS, formerId, expected);
            return transaction.save(Shelves.OFFERS, id, 0, json);
        });
    }

    private void refuse(Offer offer) {
        refuseIf(
                !shelves.suppliers().containsKey(offer.supplier()),
                "There is no supplier “" + offer.supplier() + "”; add it first.");
        refuseIf(offer.item().isBlank(), "Say which item the offer is for.");
        refuseIf(
                catalogue.items().isPresent() && catalogue.item(offer.item()).isEmpty(),
                "There is no item “" + offer.item() + "”; add it to the ingredients first.");
        refuseIf(offer.amount().signum() < 0, "A price cannot be negative.");
    }

    @Override
    public void removeSupplier(String id) {
        long expected = supplierRevision(id);
        Map<String, Long> gone = offersOf(id);
        shelves.book().write("Remove supplier " + id, transaction -> {
            gone.forEach((offer, revision) -> transaction.remove(Shelves.OFFERS, offer, revision));
            transaction.remove(Shelves.SUPPLIERS, id, expected);
            return id;
        });
    }

    @Override
    public void removeOffer(String id) {
        long expected = offerRevision(id);
        shelves.book().write("Remove offer " + id, transaction -> {
            transaction.remove(Shelves.OFFERS, id, expected);
            return id;
        });
    }

    /** The offers of a supplier and the revision each is at. */
    private Map<String, Long> offersOf(String supplier) {
        return shelves.offers().entrySet().stream()
                .filter(entry -> entry.getValue().supplier().equals(supplier))
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> offerRevision(entry.getKey())));
    }

    private static ObjectNode merged(ObjectNode stored, ObjectNode before, ObjectNode after) {
        return stored.isEmpty() ? after : EntryMerge.apply(stored, before, after);
    }

    private static ObjectNode stored(Transaction transaction, String shelf, String id) {
        return transaction
                .get(shelf, id)
                .filter(document -> !document.removed())
                .map(document -> Members.parse(document.json()))
                .orElseGet(Members::empty);
    }

    private static void refuseId(String id) {
        refuseIf(
                !id.matches("[\\p{L}\\p{N}][\\p{L}\\p{N}._-]{0,79}"),
                "A supplier needs a short identifier of letters, digits and hyphens, such as dairy.");
    }

    private static void refuseIf(boolean refused, String why) {
        if (refused) {
            throw new RefusedException(why);
        }
    }
}
