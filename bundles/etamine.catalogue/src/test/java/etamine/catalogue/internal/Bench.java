package etamine.catalogue.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.house.House;
import etamine.kitchen.item.Item;
import etamine.measures.MeasureStyle;
import etamine.measures.Unit;
import etamine.testing.GivenItems;
import etamine.testing.SetClock;
import etamine.testing.SetFacts;
import etamine.testing.SetKitchen;
import etamine.testing.VolatileBook;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/** The module's parts over a volatile book, put together as the registry would. */
final class Bench {
    static final String DAIRY = """
            {"id": "dairy", "name": "Hill Dairy", "email": "orders@dairy.example", "deliveryDays": ["TU", "FR"],
             "cutOff": {"daysBefore": 1, "time": "22:00"}, "minimum": "80.00", "fee": "6.00", "x-note": "ask for Una"}""";

    private static final House HOUSE =
            new House("The Test House", Currency.getInstance("EUR"), ZoneId.of("Europe/Dublin"), MeasureStyle.METRIC);

    final SetClock clock = SetClock.at("2026-11-24T09:00:00Z");
    final SetKitchen kitchen = new SetKitchen(HOUSE, clock);
    final VolatileBook book = new VolatileBook(clock);
    final GivenItems items = new GivenItems()
            .with("cream", Unit.L)
            .with("guinea-fowl", Unit.KG, "1 ea = 1.4 kg")
            .with("lemon", Unit.EA);
    final Shelves shelves = new Shelves(book);
    final LiveCatalogue catalogue = new LiveCatalogue(shelves, kitchen);
    final ShelfSupplierBook suppliers = new ShelfSupplierBook(shelves, catalogue, kitchen);
    final SupplierSection supplierSection = new SupplierSection(shelves, kitchen);
    final OfferSection offerSection = new OfferSection(shelves);

    Bench() {
        catalogue.items = items;
    }

    /** Loads both sections as a file would and gives what was wrong as {@code pointer: problem}. */
    List<String> load(String supplierArray, String offerArray) {
        SetFacts facts = SetFacts.covering(Item.class);
        items.all().forEach((id, item) -> facts.put(Item.class, id, item));
        supplierSection.recall(facts);
        offerSection.recall(facts);
        List<ExchangeEntry> entries = new ArrayList<>();
        List<String> troubles = new ArrayList<>();
        read(supplierSection, supplierArray, facts, entries, troubles);
        read(offerSection, offerArray, facts, entries, troubles);
        if (troubles.isEmpty()) {
            book.write("Load", transaction -> {
                entries.forEach(entry -> entry.write(transaction));
                return entries.size();
            });
        }
        return troubles;
    }

    private static void read(
            ExchangeSection section, String json, SetFacts facts, List<ExchangeEntry> into, List<String> troubles) {
        for (ExchangeEntry entry : section.read(json(json), facts)) {
            into.add(entry);
            List<Trouble> all = new ArrayList<>(entry.troubles());
            all.addAll(entry.check(facts));
            all.forEach(trouble -> troubles.add(entry.pointer() + trouble.pointer() + ": " + trouble.problem()));
        }
    }

    static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (JsonProcessingException wrong) {
            throw new IllegalArgumentException(wrong);
        }
    }
}
