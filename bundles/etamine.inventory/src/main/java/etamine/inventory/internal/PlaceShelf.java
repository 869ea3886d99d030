package etamine.inventory.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.stock.Place;
import etamine.storage.Book;
import etamine.storage.Codec;
import etamine.storage.LiveShelf;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;

/** The shelf of places, kept as values while the book is open. */
@Component(service = PlaceShelf.class)
public final class PlaceShelf {
    static final String SHELF = "places";
    private static final int UNORDERED = 1000;

    private final LiveShelf<Place> places;

    /** Reads the places once the journal has made the module's part of the book ready. */
    @Activate
    public PlaceShelf(@Reference Book book, @Reference StockJournal journal) {
        places = new LiveShelf<>(book, SHELF, new PlaceCodec());
    }

    /** Stops following the book. */
    @Deactivate
    public void close() {
        places.close();
    }

    /** The places in walking order. */
    List<Place> inOrder() {
        return places.values().values().stream()
                .sorted(Comparator.comparingInt(Place::order).thenComparing(Place::name))
                .toList();
    }

    Map<String, Place> all() {
        return places.values();
    }

    /** The revision to save a place against; 0 when there is none of that id. */
    long revision(String id) {
        return places.revision(id);
    }

    String name(String id) {
        return places.get(id).map(Place::name).orElse(id);
    }

    Map<String, String> unreadable() {
        return places.unreadable();
    }

    static Place read(EntryReader entry) {
        return new Place(
                entry.needed("id"),
                entry.needed("name"),
                entry.wholeFrom("order", 0).orElse(UNORDERED));
    }

    static ObjectNode write(Place place) {
        ObjectNode json = Json.empty().put("id", place.id()).put("name", place.name());
        return place.order() == UNORDERED ? json : json.put("order", place.order());
    }

    private static final class PlaceCodec implements Codec<Place> {
        @Override
        public Place read(String id, String json) {
            EntryReader entry = new EntryReader(Json.parse(json));
            Place place = PlaceShelf.read(entry);
            if (!entry.troubles().isEmpty()) {
                throw new IllegalArgumentException(entry.troubles().get(0).problem());
            }
            return place;
        }

        @Override
        public String write(Place place) {
            return PlaceShelf.write(place).toString();
        }
    }
}
