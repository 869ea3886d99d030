package etamine.inventory.internal;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.inventory.internal.LedgerSections.Earliest;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.SchemaWords;
import etamine.kitchen.stock.MovementKind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The section {@code movements}: every entry of the ledger but opening stock. */
@Component
public final class MovementSection implements ExchangeSection {
    private static final String SCHEMA = SchemaWords.schema(MovementSection.class, "/schema/movements.json");

    private final LedgerSections ledger;

    /** Reads and writes the ledger. */
    @Activate
    public MovementSection(@Reference StockJournal journal) {
        this.ledger = new LedgerSections(journal);
    }

    @Override
    public String name() {
        return "movements";
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
        return Set.of("ingredients", "recipes", "places", "stock");
    }

    @Override
    public void recall(Facts facts) {
        // movements declare nothing that others refer to
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        List<ExchangeEntry> entries = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < section.size(); i++) {
            if (section.get(i).isObject()) {
                entries.add(entry("/" + i, section.get(i), facts, seen));
            }
        }
        return entries;
    }

    private ExchangeEntry entry(String pointer, JsonNode node, Facts facts, Map<String, Integer> seen) {
        EntryReader reader = new EntryReader(node);
        Optional<MovementKind> kind = reader.choice("kind", MovementKind.class);
        if (!reader.has("kind")) {
            reader.trouble("kind", "Write the kind, such as wasted.");
        }
        if (!reader.has("at")) {
            reader.trouble("at", "Write when it happened, such as 2026-11-20T18:00:00Z.");
        }
        MovementReader movement = LedgerSections.read(reader, node, kind.orElse(MovementKind.COUNTED), seen);
        movement.at().ifPresent(at -> earliest(facts, at));
        return ledger.entry(
                pointer, movement, reader.troubles(), all -> movement.at().orElse(Instant.EPOCH));
    }

    private static void earliest(Facts facts, Instant at) {
        Optional<Earliest> known = facts.find(Earliest.class, "");
        if (known.isEmpty() || at.isBefore(known.get().at())) {
            facts.put(Earliest.class, "", new Earliest(at));
        }
    }

    @Override
    public JsonNode dump() {
        return ledger.dump(entry -> !LedgerSections.opening(entry));
    }
}
