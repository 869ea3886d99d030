package etamine.costing.internal.rules;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.DocumentSection;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.exchange.SchemaWords;
import etamine.storage.Document;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The section {@code costing}: one object, the rules costs are reckoned by. */
@Component
public final class CostingSection implements ExchangeSection {
    private final ShelvedCostSettings settings;

    /** The section of those settings. */
    @Activate
    public CostingSection(@Reference ShelvedCostSettings settings) {
        this.settings = settings;
    }

    @Override
    public String name() {
        return ShelvedCostSettings.NAME;
    }

    @Override
    public String module() {
        return ShelvedCostSettings.MODULE;
    }

    @Override
    public String schema() {
        return SchemaWords.schema(CostingSection.class, "/schema/costing.json");
    }

    @Override
    public void recall(Facts facts) {
        // nobody refers to the rules
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        if (!(section instanceof ObjectNode entry)) {
            return List.of();
        }
        try {
            RulesForm.read(entry);
        } catch (IllegalArgumentException wrong) {
            return List.of(DocumentSection.refused("", wrong));
        }
        return List.of(new ReadEntry(
                "",
                "",
                List.of(),
                known -> List.of(),
                transaction -> transaction.save(name(), name(), Document.ANY, entry.toString())));
    }

    @Override
    public JsonNode dump() {
        return settings.book()
                .shelf(name())
                .get(name())
                .<JsonNode>map(document -> EntryJson.read(document.json()))
                .orElseGet(MissingNode::getInstance);
    }
}
