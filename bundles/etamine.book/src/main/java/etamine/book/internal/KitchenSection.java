package etamine.book.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import etamine.book.internal.exchange.Json;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.exchange.SchemaWords;
import etamine.kitchen.house.House;
import etamine.storage.Book;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The section {@code kitchen}: the settings of the house. */
@Component
public final class KitchenSection implements ExchangeSection {
    private static final String SCHEMA = SchemaWords.schema(KitchenSection.class, "/schema/kitchen.json");
    private static final HouseForm FORM = new HouseForm();

    private final Book book;

    /** The section of that book. */
    @Activate
    public KitchenSection(@Reference Book book) {
        this.book = book;
    }

    @Override
    public String name() {
        return HouseForm.KITCHEN;
    }

    @Override
    public String module() {
        return "etamine.book";
    }

    @Override
    public String schema() {
        return SCHEMA;
    }

    @Override
    public Set<Class<?>> declares() {
        return Set.of(House.class);
    }

    @Override
    public void recall(Facts facts) {
        present().ifPresent(house -> facts.put(House.class, "", house));
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        if (section.isNull()) {
            return List.of();
        }
        try {
            House house = FORM.read(section);
            facts.put(House.class, "", house);
            return List.of(new ReadEntry(
                    "", "", List.of(), all -> compare(house), transaction -> write(transaction, section)));
        } catch (IllegalArgumentException e) {
            return List.of(ReadEntry.refused("", "", List.of(new Trouble("", String.valueOf(e.getMessage())))));
        }
    }

    @Override
    public JsonNode dump() {
        return document().map(document -> Json.parse(document.json())).orElse(MissingNode.getInstance());
    }

    /**
     * Prices carry no currency of their own, so another currency would change what all of them mean. A book in which
     * nothing but these settings was ever written has none yet.
     */
    private List<Trouble> compare(House house) {
        int settings = book.shelf(HouseForm.KITCHEN).history(HouseForm.KITCHEN).size();
        return present()
                .filter(now -> book.revision() > settings)
                .filter(now -> !now.currency().equals(house.currency()))
                .map(now -> List.of(new Trouble(
                        "/currency",
                        "This book keeps its prices in " + now.currency() + "; load the file into a new book, or take"
                                + " the kitchen section out of it if its prices are in " + now.currency() + ".")))
                .orElse(List.of());
    }

    private Optional<House> present() {
        try {
            return document().map(document -> FORM.read(document.id(), document.json()));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty(); // the check of the book names it
        }
    }

    private Optional<Document> document() {
        return book.shelf(HouseForm.KITCHEN).get(HouseForm.KITCHEN);
    }

    private static void write(Transaction transaction, JsonNode section) {
        transaction.save(HouseForm.KITCHEN, HouseForm.KITCHEN, Document.ANY, section.toString());
    }
}
