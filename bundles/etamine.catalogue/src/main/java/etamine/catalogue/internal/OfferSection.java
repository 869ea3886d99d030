package etamine.catalogue.internal;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.exchange.SchemaWords;
import etamine.kitchen.item.Item;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Conversion;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The section {@code offers}. */
@Component
public final class OfferSection implements ExchangeSection {
    private static final String SCHEMA = SchemaWords.schema(OfferSection.class, "/schema/offers.json");

    private final Shelves shelves;

    /** Reads and writes the shelf of offers. */
    @Activate
    public OfferSection(@Reference Shelves shelves) {
        this.shelves = shelves;
    }

    @Override
    public String name() {
        return "offers";
    }

    @Override
    public String module() {
        return "etamine.catalogue";
    }

    @Override
    public String schema() {
        return SCHEMA;
    }

    @Override
    public Set<String> after() {
        return Set.of("ingredients", "recipes", "suppliers");
    }

    @Override
    public Set<Class<?>> declares() {
        return Set.of(Offer.class);
    }

    @Override
    public void recall(Facts facts) {
        shelves.offers().forEach((id, offer) -> facts.put(Offer.class, id, offer));
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
        Offer offer = OfferForm.read(reader);
        String id = OfferForm.id(offer);
        if (!reader.troubles().isEmpty()) {
            return ReadEntry.refused(pointer, id, reader.troubles());
        }
        facts.put(Offer.class, id, offer);
        return new ReadEntry(
                pointer,
                id,
                List.of(),
                all -> beside(offer, all),
                to -> to.save(Shelves.OFFERS, id, Document.ANY, node.toString()));
    }

    private static List<Trouble> beside(Offer offer, Facts facts) {
        List<Trouble> troubles = new ArrayList<>();
        if (facts.find(Supplier.class, offer.supplier()).isEmpty()) {
            troubles.add(new Trouble(
                    "/supplier",
                    "There is no supplier “" + offer.supplier() + "”; add it under suppliers or correct the id."));
        }
        Optional<Item> item = facts.find(Item.class, offer.item());
        if (item.isEmpty() && facts.covers(Item.class)) {
            troubles.add(new Trouble(
                    "/item", "There is no item “" + offer.item() + "”; add it under ingredients or correct the id."));
        }
        if (item.isPresent() && new PackContent(offer, item).content() instanceof Conversion.Missing missing) {
            troubles.add(new Trouble(
                    "/pack",
                    "The pack cannot be converted to what “" + offer.item() + "” is counted in. " + missing.text()));
        }
        return troubles;
    }

    @Override
    public JsonNode dump() {
        return Members.dump(shelves.book().shelf(Shelves.OFFERS));
    }
}
