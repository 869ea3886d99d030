package etamine.diary.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import etamine.kitchen.covers.Sale;
import etamine.kitchen.exchange.DocumentSection;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.exchange.SchemaWords;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/**
 * What was sold, an entry per day and recipe. Loading brings the total of that day and recipe to the number given, so
 * loading a file twice changes nothing the second time.
 */
@Component(service = ExchangeSection.class)
public final class SalesSection implements ExchangeSection {
    private final ShelfDiary diary;

    /** The section of the open diary. */
    @Activate
    public SalesSection(@Reference ShelfDiary diary) {
        this.diary = diary;
    }

    @Override
    public String name() {
        return Entries.SALES;
    }

    @Override
    public String module() {
        return "etamine.diary";
    }

    @Override
    public String schema() {
        return SchemaWords.schema(SalesSection.class, "/schema/" + Entries.SALES + ".json");
    }

    @Override
    public void recall(Facts facts) {
        // nobody refers to sales
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        Map<String, Sale> before = new HashMap<>();
        diary.allSales().forEach(sale -> before.put(id(sale), sale));
        List<ExchangeEntry> entries = new ArrayList<>();
        for (int i = 0; i < section.size(); i++) {
            if (section.get(i).isObject()) {
                entries.add(entry("/" + i, section.get(i), before));
            }
        }
        return entries;
    }

    @Override
    public JsonNode dump() {
        List<Sale> sales = diary.allSales();
        if (sales.isEmpty()) {
            return MissingNode.getInstance();
        }
        ArrayNode array = EntryJson.empty().arrayNode();
        sales.forEach(sale -> array.addObject()
                .put("date", sale.date().toString())
                .put("recipe", sale.recipe())
                .put("sold", sale.sold()));
        return array;
    }

    private ExchangeEntry entry(String pointer, JsonNode node, Map<String, Sale> before) {
        try {
            Sale sale = sale(node);
            Sale known = before.getOrDefault(id(sale), new Sale(sale.date(), sale.recipe(), 0));
            return new ReadEntry(
                    pointer,
                    id(sale),
                    List.of(),
                    facts -> References.recipe(sale.recipe(), facts),
                    transaction -> diary.ledger().adjust(transaction, known, sale.sold()));
        } catch (IllegalArgumentException wrong) {
            return DocumentSection.refused(pointer, wrong);
        }
    }

    private static Sale sale(JsonNode node) {
        long sold = node.path("sold").longValue();
        Entries.notNegative(Long.signum(sold), "sold");
        return new Sale(Entries.date(node), EntryJson.text(node, "recipe"), sold);
    }

    private static String id(Sale sale) {
        return sale.date() + "/" + sale.recipe();
    }
}
