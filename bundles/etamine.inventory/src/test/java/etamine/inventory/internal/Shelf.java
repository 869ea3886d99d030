package etamine.inventory.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import etamine.inventory.Incoming;
import etamine.inventory.Outgoing;
import etamine.inventory.StockLine;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.house.House;
import etamine.kitchen.item.Item;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.Place;
import etamine.measures.MeasureStyle;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.storage.Book;
import etamine.testing.GivenItems;
import etamine.testing.SetClock;
import etamine.testing.SetFacts;
import etamine.testing.SetKitchen;
import etamine.testing.VolatileBook;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The module's parts over a volatile book, put together as the registry would. */
final class Shelf {
    private static final House HOUSE =
            new House("The Test House", Currency.getInstance("EUR"), ZoneId.of("Europe/Dublin"), MeasureStyle.METRIC);

    final SetClock clock = SetClock.at("2026-11-24T09:00:00Z");
    final SetKitchen kitchen = new SetKitchen(HOUSE, clock);
    final Book book;
    final GivenItems given = new GivenItems()
            .with("cream", Unit.L)
            .with("celeriac", Unit.KG, "1 ea = 750 g")
            .with("jacket", Unit.EA);
    final KnownItems items = new KnownItems();
    final StockJournal journal;
    final PlaceShelf places;
    final LotStock stock;
    final ShelfReport report;
    final Movers movers;
    final JournalStockroom room;
    final PaidPrices paid;

    Shelf() {
        this(new VolatileBook(SetClock.at("2026-11-24T09:00:00Z")));
    }

    Shelf(Book book) {
        this.book = book;
        items.items = given;
        journal = new StockJournal(book);
        places = new PlaceShelf(book, journal);
        stock = new LotStock(journal, places, items, kitchen);
        report = new ShelfReport(stock, items, places);
        movers = new Movers(journal, items, places);
        room = new JournalStockroom(journal, report, movers, items, places, kitchen);
        paid = new PaidPrices(journal, items, kitchen);
    }

    /** A shelf with a walk-in and a dry store. */
    static Shelf withPlaces() {
        Shelf shelf = new Shelf();
        shelf.room.savePlace(new Place("walk-in", "Walk-in", 1));
        shelf.room.savePlace(new Place("dry", "Dry store", 2));
        return shelf;
    }

    void day(String day) {
        clock.set(Instant.parse(day + "T09:00:00Z"));
    }

    void receive(String item, String quantity, String useBy, String cost, String per) {
        Optional<LocalDate> day = useBy.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(useBy));
        Optional<UnitPrice> price = cost.isEmpty() ? Optional.empty() : Optional.of(UnitPrice.of(cost, per));
        room.receive("", List.of(new Incoming(item, "", Quantity.parse(quantity), day, price, "")));
    }

    void take(MovementKind kind, String item, String quantity) {
        room.take(kind, new Outgoing(item, Quantity.parse(quantity), Optional.empty(), ""));
    }

    StockLine line(String item) {
        return room.lines(kitchen.today()).stream()
                .filter(line -> line.item().equals(item))
                .findFirst()
                .orElseThrow();
    }

    String lots(String item) {
        return line(item).lots().stream()
                .map(lot -> lot.place() + " " + lot.quantity()
                        + lot.useBy().map(day -> " " + day).orElse(""))
                .toList()
                .toString();
    }

    /** Loads sections as one file would; gives what was wrong as {@code section/pointer: problem}. */
    List<String> load(String file) {
        JsonNode json = json(file);
        SetFacts facts = SetFacts.covering(Item.class, Place.class);
        given.all().forEach((id, item) -> facts.put(Item.class, id, item));
        Map<ExchangeSection, List<ExchangeEntry>> read = new LinkedHashMap<>();
        sections().forEach(section -> section.recall(facts));
        sections().forEach(section -> read.put(section, section.read(json.path(section.name()), facts)));
        List<String> troubles = new ArrayList<>();
        read.forEach((section, entries) -> entries.forEach(entry -> {
            List<ExchangeEntry.Trouble> found = new ArrayList<>(entry.troubles());
            found.addAll(entry.check(facts));
            found.forEach(trouble ->
                    troubles.add(section.name() + entry.pointer() + trouble.pointer() + ": " + trouble.problem()));
        }));
        if (troubles.isEmpty()) {
            book.write("Load", transaction -> {
                read.values().forEach(entries -> entries.forEach(entry -> entry.write(transaction)));
                return "";
            });
        }
        return troubles;
    }

    /** The sections as they stand in the book. */
    JsonNode dump() {
        var all = new ObjectMapper().createObjectNode();
        for (ExchangeSection section : sections()) {
            JsonNode dumped = section.dump();
            if (!dumped.isMissingNode()) {
                all.set(section.name(), dumped);
            }
        }
        return all;
    }

    private List<ExchangeSection> sections() {
        return List.of(
                new PlaceSection(book, places), new OpeningSection(journal, kitchen), new MovementSection(journal));
    }

    static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (JsonProcessingException wrong) {
            throw new IllegalArgumentException(wrong);
        }
    }
}
