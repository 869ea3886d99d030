package etamine.ingredients.internal;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.ingredients.IngredientList;
import etamine.kitchen.find.NameMatch;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.measures.UnitPrice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists items on the console: {@code items [TEXT]}. */
@Component
public final class ItemsVerb implements Verb {
    private final Items items;
    private final IngredientList list;

    /** Lists those items. */
    @Activate
    public ItemsVerb(@Reference Items items, @Reference IngredientList list) {
        this.items = items;
        this.list = list;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("items", "list ingredients and made items, those that contain TEXT", "[TEXT...]");
    }

    @Override
    public Report run(VerbCall call) {
        NameMatch match = new NameMatch(String.join(" ", call.arguments()));
        List<Map<String, Object>> json = new ArrayList<>();
        TextTable table =
                new TextTable("id", "name", "group", "counted in", ">price", "storage", "allergens", ">used in");
        for (Item item : items.all().values()) {
            if (match.fits(item.name()) || match.fits(item.id())) {
                json.add(json(item));
                table.row(
                        item.id(),
                        item.name(),
                        item.group(),
                        item.countIn().symbol(),
                        item.writtenPrice().map(UnitPrice::toString).orElse(""),
                        item.storage(),
                        item.allergens().inWords(),
                        uses(item));
            }
        }
        List<String> lines = new ArrayList<>(table.lines());
        lines.add(json.isEmpty() ? "No item fits." : Allergens.CAUTION);
        return Report.done(Map.of("items", json), lines);
    }

    private String uses(Item item) {
        int uses = list.usedIn(item.id()).size();
        return uses == 0 ? "" : Integer.toString(uses);
    }

    private Map<String, Object> json(Item item) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", item.id());
        json.put("name", item.name());
        json.put("group", item.group());
        json.put("made", item.made());
        json.put("countIn", item.countIn().symbol());
        json.put("storage", item.storage());
        item.keeps().ifPresent(keeps -> json.put("keeps", keeps.toString()));
        item.writtenPrice()
                .ifPresent(price -> json.put(
                        "price",
                        Map.of(
                                "amount",
                                price.amount().toPlainString(),
                                "per",
                                price.per().toString())));
        json.put("contains", List.copyOf(new TreeSet<>(item.allergens().contains())));
        json.put("mayContain", List.copyOf(new TreeSet<>(item.allergens().mayContain())));
        json.put("allergensKnown", item.allergens().known());
        if (!item.allergens().named().isEmpty()) {
            json.put("allergenNames", new TreeMap<>(item.allergens().named()));
        }
        item.allergens().sulphites().ifPresent(amount -> json.put("sulphites", amount.toPlainString()));
        json.put("suits", List.copyOf(new TreeSet<>(item.diet().suits())));
        json.put("unsuited", List.copyOf(new TreeSet<>(item.diet().unsuited())));
        json.put("usedIn", list.usedIn(item.id()).size());
        return json;
    }
}
