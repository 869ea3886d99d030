package etamine.inventory.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.exchange.SchemaWords;
import etamine.kitchen.stock.Place;
import etamine.storage.Book;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The section {@code places}. */
@Component
public final class PlaceSection implements ExchangeSection {
    private static final String SCHEMA = SchemaWords.schema(PlaceSection.class, "/schema/places.json");

    private final Book book;
    private final PlaceShelf places;

    /** Reads and writes the shelf of places. */
    @Activate
    public PlaceSection(@Reference Book book, @Reference PlaceShelf places) {
        this.book = book;
        this.places = places;
    }

    @Override
    public String name() {
        return "places";
    }

    @Override
    public String module() {
        return "etamine.inventory";
    }

    @Override
    public String schema() {
        return SCHEMA;
    }

    @Override
    public Set<Class<?>> declares() {
        return Set.of(Place.class);
    }

    @Override
    public void recall(Facts facts) {
        places.all().forEach((id, place) -> facts.put(Place.class, id, place));
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        List<ExchangeEntry> entries = new ArrayList<>();
        for (int i = 0; i < section.size(); i++) {
            if (section.get(i).isObject()) {
                entries.add(entry("/" + i, section.get(i), facts));
            }
        }
        return entries;
    }

    private static ExchangeEntry entry(String pointer, JsonNode node, Facts facts) {
        EntryReader reader = new EntryReader(node);
        Place place = PlaceShelf.read(reader);
        if (!reader.troubles().isEmpty()) {
            return ReadEntry.refused(pointer, place.id(), reader.troubles());
        }
        facts.put(Place.class, place.id(), place);
        return new ReadEntry(
                pointer,
                place.id(),
                List.of(),
                ignored -> List.of(),
                to -> to.save(PlaceShelf.SHELF, place.id(), Document.ANY, node.toString()));
    }

    @Override
    public JsonNode dump() {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        book.shelf(PlaceShelf.SHELF).all().forEach(document -> all.add(Json.parse(document.json())));
        return all.isEmpty() ? MissingNode.getInstance() : all;
    }
}
