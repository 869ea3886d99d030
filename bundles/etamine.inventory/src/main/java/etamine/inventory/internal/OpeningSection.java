package etamine.inventory.internal;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.inventory.internal.LedgerSections.Earliest;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.SchemaWords;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.stock.MovementKind;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The section {@code stock}: opening stock. What has no time of its own stands before all movements of its file. */
@Component
public final class OpeningSection implements ExchangeSection {
    private static final String SCHEMA = SchemaWords.schema(OpeningSection.class, "/schema/stock.json");

    private final LedgerSections ledger;
    private final Kitchen kitchen;

    /** Reads and writes opening entries. */
    @Activate
    public OpeningSection(@Reference StockJournal journal, @Reference Kitchen kitchen) {
        this.ledger = new LedgerSections(journal);
        this.kitchen = kitchen;
    }

    @Override
    public String name() {
        return "stock";
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
    public Set<String> after() {
        return Set.of("ingredients", "recipes", "places");
    }

    @Override
    public void recall(Facts facts) {
        // opening stock declares nothing that others refer to
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        List<ExchangeEntry> entries = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < section.size(); i++) {
            JsonNode node = section.get(i);
            if (node.isObject()) {
                EntryReader reader = new EntryReader(node);
                MovementReader opening = LedgerSections.read(reader, node, MovementKind.OPENING, seen);
                entries.add(ledger.entry(
                        "/" + i, opening, reader.troubles(), all -> opening.at().orElseGet(() -> before(all))));
            }
        }
        return entries;
    }

    private Instant before(Facts facts) {
        Instant now = kitchen.clock().instant().truncatedTo(ChronoUnit.SECONDS);
        return facts.find(Earliest.class, "")
                .map(earliest -> earliest.at().minusSeconds(1).truncatedTo(ChronoUnit.SECONDS))
                .filter(now::isAfter)
                .orElse(now);
    }

    @Override
    public JsonNode dump() {
        return ledger.dump(LedgerSections::opening);
    }
}
