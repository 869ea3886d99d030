package etamine.ingredients.internal;

import etamine.measures.UnitPrice;
import etamine.storage.Document;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** What was written as the price of an ingredient and when, read from the revisions of its document. Thread-safe. */
final class PastWrittenPrices {
    private final IngredientShelf shelf;
    private final Map<String, Read> read = new ConcurrentHashMap<>();

    private record Read(long revision, List<Writing> writings) {}

    private record Writing(Instant at, Optional<UnitPrice> price) {}

    /**
     * A price and the day it was written.
     *
     * @param on the day
     * @param price the price; empty when it was taken away
     */
    record Past(LocalDate on, Optional<UnitPrice> price) {}

    PastWrittenPrices(IngredientShelf shelf) {
        this.shelf = shelf;
    }

    /** Since when an ingredient has the price it has. */
    Optional<LocalDate> since(String id, ZoneId zone) {
        if (shelf.revision(id) == 1) {
            return shelf.writtenAt(id).map(at -> at.atZone(zone).toLocalDate());
        }
        List<Writing> writings = writings(id);
        return writings.isEmpty() ? Optional.empty() : Optional.of(day(writings.get(writings.size() - 1), zone));
    }

    /** Every price it had, oldest first; of several on one day the last. */
    List<Past> prices(String id, ZoneId zone) {
        List<Past> prices = new ArrayList<>();
        for (Writing writing : writings(id)) {
            LocalDate on = day(writing, zone);
            if (!prices.isEmpty() && prices.get(prices.size() - 1).on().equals(on)) {
                prices.remove(prices.size() - 1);
            }
            prices.add(new Past(on, writing.price()));
        }
        return prices;
    }

    private static LocalDate day(Writing writing, ZoneId zone) {
        return writing.at().atZone(zone).toLocalDate();
    }

    private List<Writing> writings(String id) {
        long revision = shelf.revision(id);
        Read known = read.get(id);
        if (known == null || known.revision != revision) {
            known = new Read(revision, changes(id));
            read.put(id, known);
        }
        return known.writings;
    }

    /** The revisions that changed the price. */
    private List<Writing> changes(String id) {
        List<Writing> changes = new ArrayList<>();
        for (Document document : shelf.book().shelf(IngredientShelf.NAME).history(id)) {
            Optional<UnitPrice> price = price(id, document);
            Optional<UnitPrice> before = changes.isEmpty()
                    ? Optional.empty()
                    : changes.get(changes.size() - 1).price();
            if (changes.isEmpty() || !before.equals(price)) {
                changes.add(new Writing(document.at(), price));
            }
        }
        return changes;
    }

    private Optional<UnitPrice> price(String id, Document document) {
        try {
            return document.removed()
                    ? Optional.empty()
                    : shelf.form().read(id, document.json()).item().writtenPrice();
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }
}
