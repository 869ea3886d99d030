package etamine.catalogue.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.supply.Offer;
import etamine.storage.Book;
import etamine.storage.Codec;
import etamine.storage.Document;
import etamine.storage.LiveShelf;
import etamine.storage.ModuleFormat;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;

/** The two shelves of this module, kept as values while the book is open. */
@Component(service = Shelves.class)
public final class Shelves {
    static final String SUPPLIERS = "suppliers";
    static final String OFFERS = "offers";

    private static final Codec<Offer> OFFER_CODEC = new JsonCodec<>(OfferForm::read, OfferForm::write);

    private final Book book;
    private final LiveShelf<SupplierForm> suppliers;
    private final LiveShelf<Offer> offers;
    private volatile Index index = new Index(Map.of(), Map.of());

    private record Index(Map<String, Offer> of, Map<String, List<Offer>> byItem) {}

    /** Makes the shelves ready and reads them. */
    @Activate
    public Shelves(@Reference Book book) {
        this.book = book;
        book.prepare(new ModuleFormat("etamine.catalogue", 1, List.of(), List.of()));
        suppliers = new LiveShelf<>(book, SUPPLIERS, new JsonCodec<>(SupplierForm::read, SupplierForm::write));
        offers = new LiveShelf<>(book, OFFERS, OFFER_CODEC);
    }

    /** Stops following the book. */
    @Deactivate
    public void close() {
        suppliers.close();
        offers.close();
    }

    Book book() {
        return book;
    }

    Map<String, SupplierForm> suppliers() {
        return suppliers.values();
    }

    Optional<SupplierForm> supplier(String id) {
        return suppliers.get(id);
    }

    Map<String, Offer> offers() {
        return offers.values();
    }

    long supplierRevision(String id) {
        return suppliers.revision(id);
    }

    long offerRevision(String id) {
        return offers.revision(id);
    }

    /** The offers that were removed, by id, as they were first written. */
    Map<String, Offer> removedOffers() {
        Map<String, Offer> removed = new TreeMap<>();
        for (Document document : book.shelf(OFFERS).firsts()) {
            if (offers.revision(document.id()) == 0) {
                readable(document).ifPresent(offer -> removed.put(document.id(), offer));
            }
        }
        return removed;
    }

    private static Optional<Offer> readable(Document document) {
        try {
            return Optional.of(OFFER_CODEC.read(document.id(), document.json()));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty(); // the check of the book names what cannot be read
        }
    }

    /** Every revision of an offer, oldest first, each with its day in that zone; what cannot be read is left out. */
    List<Written> writings(String id, ZoneId zone) {
        List<Written> writings = new ArrayList<>();
        for (Document document : book.shelf(OFFERS).history(id)) {
            Optional<Offer> offer = document.removed() ? Optional.empty() : readable(document);
            if (document.removed() || offer.isPresent()) {
                writings.add(new Written(document.at().atZone(zone).toLocalDate(), offer));
            }
        }
        return writings;
    }

    /**
     * An offer as it was written on a day.
     *
     * @param on the day
     * @param offer what was written; empty when it was removed
     */
    record Written(LocalDate on, Optional<Offer> offer) {}

    /** The offers of an item, in the order of their ids. */
    List<Offer> offersOf(String item) {
        Map<String, Offer> now = offers.values();
        Index known = index;
        if (known.of() != now) {
            Map<String, List<Offer>> byItem = new TreeMap<>();
            now.values()
                    .forEach(offer -> byItem.computeIfAbsent(offer.item(), key -> new ArrayList<>())
                            .add(offer));
            known = new Index(now, byItem);
            index = known;
        }
        return known.byItem().getOrDefault(item, List.of());
    }

    /** Documents that could not be read, {@code shelf/id} to reason. */
    Map<String, String> unreadable() {
        Map<String, String> all = new TreeMap<>();
        suppliers.unreadable().forEach((id, reason) -> all.put(SUPPLIERS + "/" + id, reason));
        offers.unreadable().forEach((id, reason) -> all.put(OFFERS + "/" + id, reason));
        return all;
    }

    /** Documents in their exchange form. */
    private record JsonCodec<T>(Function<EntryReader, T> reader, BiFunction<T, ObjectNode, ObjectNode> writer)
            implements Codec<T> {
        @Override
        public T read(String id, String json) {
            EntryReader entry = new EntryReader(Members.parse(json));
            T value = reader.apply(entry);
            if (!entry.troubles().isEmpty()) {
                Trouble first = entry.troubles().get(0);
                throw new IllegalArgumentException(first.pointer() + ": " + first.problem());
            }
            return value;
        }

        @Override
        public String write(T value) {
            return writer.apply(value, Members.empty()).toString();
        }
    }
}
