package etamine.catalogue.internal;

import etamine.catalogue.internal.Shelves.Written;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.supply.Offer;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The offers of an item as they were, removed ones included. An offer that names its first day counts from that day on
 * even when it was typed in later; one that names none counts from the day it was written. Thread-safe.
 */
final class PastOffers {
    private final LiveCatalogue catalogue;
    private final Shelves shelves;
    private final Kitchen kitchen;
    private volatile Gone gone = new Gone(Map.of(), Map.of());

    /** The ids of removed offers by item, for as long as the shelf is the one they were read beside. */
    private record Gone(Map<String, Offer> beside, Map<String, List<String>> byItem) {}

    PastOffers(LiveCatalogue catalogue, Shelves shelves, Kitchen kitchen) {
        this.catalogue = catalogue;
        this.shelves = shelves;
        this.kitchen = kitchen;
    }

    /** What held at the end of that day, cheapest per unit first. */
    List<Offer> offers(String item, LocalDate on) {
        List<Offer> then = new ArrayList<>();
        for (Offer offer : shelves.offersOf(item)) {
            String id = OfferForm.id(offer);
            if (shelves.offerRevision(id) <= 1 && offer.from().isPresent()) {
                then.add(offer);
            } else {
                asWritten(id, on).filter(old -> old.item().equals(item)).ifPresent(then::add);
            }
        }
        for (String id : removed(item)) {
            asWritten(id, on).filter(old -> old.item().equals(item)).ifPresent(then::add);
        }
        return catalogue.cheapestFirst(then, item, on);
    }

    private Optional<Offer> asWritten(String id, LocalDate on) {
        Optional<Offer> found = Optional.empty();
        boolean first = true;
        for (Written written : shelves.writings(id, zone())) {
            boolean backdated = first && written.offer().flatMap(Offer::from).isPresent();
            if (backdated || !written.on().isAfter(on)) {
                found = written.offer();
            }
            first = false;
        }
        return found;
    }

    /** The days up to {@code until} on which the offers of an item may have changed, in order. */
    SortedSet<LocalDate> turns(String item, LocalDate until) {
        SortedSet<LocalDate> days = new TreeSet<>();
        shelves.offersOf(item).forEach(offer -> turns(OfferForm.id(offer), days));
        removed(item).forEach(id -> turns(id, days));
        return new TreeSet<>(days.headSet(until.plusDays(1)));
    }

    private void turns(String id, SortedSet<LocalDate> days) {
        boolean first = true;
        for (Written written : shelves.writings(id, zone())) {
            Optional<LocalDate> from = written.offer().flatMap(Offer::from);
            from.ifPresent(days::add);
            if (!first || from.isEmpty()) {
                days.add(written.on());
            }
            first = false;
        }
    }

    private List<String> removed(String item) {
        Map<String, Offer> now = shelves.offers();
        Gone known = gone;
        if (known.beside != now) {
            Map<String, List<String>> byItem = new HashMap<>();
            shelves.removedOffers()
                    .forEach((id, offer) -> byItem.computeIfAbsent(offer.item(), key -> new ArrayList<>())
                            .add(id));
            known = new Gone(now, byItem);
            gone = known;
        }
        return known.byItem.getOrDefault(item, List.of());
    }

    private ZoneId zone() {
        return kitchen.house().zone();
    }
}
