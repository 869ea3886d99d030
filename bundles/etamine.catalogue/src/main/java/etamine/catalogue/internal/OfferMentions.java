package etamine.catalogue.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ReplacedMembers;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemMentions;
import etamine.kitchen.item.Replacement;
import etamine.kitchen.supply.Offer;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Where offers name an item. */
@Component
public final class OfferMentions implements ItemMentions {
    private final Shelves shelves;

    /** Looks through those shelves. */
    @Activate
    public OfferMentions(@Reference Shelves shelves) {
        this.shelves = shelves;
    }

    @Override
    public List<Mention> of(String item) {
        return shelves.offersOf(item).stream()
                .map(offer -> new Mention("offer", OfferForm.id(offer), words(offer)))
                .toList();
    }

    private String words(Offer offer) {
        String supplier =
                shelves.supplier(offer.supplier()).map(SupplierForm::name).orElse(offer.supplier());
        String code = offer.code().isEmpty() ? "" : ", " + offer.code();
        return "Offer of " + supplier + code + ", " + offer.pack()
                + offer.from().map(from -> " from " + from).orElse("");
    }

    @Override
    public int rewrite(Transaction transaction, Item from, Item into) {
        ReplacedMembers members = new ReplacedMembers(new Replacement(from, into));
        int rewritten = 0;
        for (Document document : shelves.book().shelf(Shelves.OFFERS).all()) {
            ObjectNode entry = Members.parse(document.json());
            if (members.names(entry)) {
                members.pack(entry, "pack");
                members.price(entry, "price");
                members.item(entry);
                put(transaction, document, entry, from);
                rewritten++;
            }
        }
        return rewritten;
    }

    /** An offer without an article number is known by its item, so that it may get another name. */
    private void put(Transaction transaction, Document document, ObjectNode entry, Item from) {
        String id = OfferForm.id(OfferForm.read(new EntryReader(entry)));
        if (id.equals(document.id())) {
            transaction.save(Shelves.OFFERS, id, document.revision(), entry.toString());
            return;
        }
        if (transaction
                .get(Shelves.OFFERS, id)
                .filter(there -> !there.removed())
                .isPresent()) {
            throw new IllegalArgumentException(
                    "The supplier “" + entry.path("supplier").asText()
                            + "” offers both without an article number; write the number on its offer of " + from.name()
                            + ", then merge again.");
        }
        transaction.remove(Shelves.OFFERS, document.id(), document.revision());
        transaction.save(Shelves.OFFERS, id, 0, entry.toString());
    }
}
