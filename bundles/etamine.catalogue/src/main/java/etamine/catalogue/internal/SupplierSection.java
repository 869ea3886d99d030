package etamine.catalogue.internal;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.exchange.SchemaWords;
import etamine.kitchen.house.House;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.supply.Supplier;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The section {@code suppliers}. */
@Component
public final class SupplierSection implements ExchangeSection {
    private static final String SCHEMA = SchemaWords.schema(SupplierSection.class, "/schema/suppliers.json");

    private final Shelves shelves;
    private final Kitchen kitchen;

    /** Reads and writes the shelf of suppliers. */
    @Activate
    public SupplierSection(@Reference Shelves shelves, @Reference Kitchen kitchen) {
        this.shelves = shelves;
        this.kitchen = kitchen;
    }

    @Override
    public String name() {
        return "suppliers";
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
    public Set<Class<?>> declares() {
        return Set.of(Supplier.class);
    }

    @Override
    public void recall(Facts facts) {
        Currency currency = kitchen.house().currency();
        shelves.suppliers().forEach((id, form) -> facts.put(Supplier.class, id, form.in(currency)));
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        Currency currency =
                facts.find(House.class, "").orElseGet(kitchen::house).currency();
        List<ExchangeEntry> entries = new ArrayList<>();
        for (int i = 0; i < section.size(); i++) {
            if (section.get(i).isObject()) {
                entries.add(entry("/" + i, section.get(i), facts, currency));
            }
        }
        return entries;
    }

    private static ExchangeEntry entry(String pointer, JsonNode node, Facts facts, Currency currency) {
        EntryReader reader = new EntryReader(node);
        SupplierForm form = SupplierForm.read(reader);
        if (!reader.troubles().isEmpty()) {
            return ReadEntry.refused(pointer, form.id(), reader.troubles());
        }
        facts.put(Supplier.class, form.id(), form.in(currency));
        return new ReadEntry(
                pointer,
                form.id(),
                List.of(),
                ignored -> List.of(),
                to -> to.save(Shelves.SUPPLIERS, form.id(), Document.ANY, node.toString()));
    }

    @Override
    public JsonNode dump() {
        return Members.dump(shelves.book().shelf(Shelves.SUPPLIERS));
    }
}
