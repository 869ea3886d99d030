package etamine.ingredients.internal;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.ingredients.IngredientMerges;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemMentions.Mention;
import etamine.kitchen.item.Items;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Says where the book names an item: {@code uses ITEM}. */
@Component
public final class UsesVerb implements Verb {
    private final IngredientMerges merges;
    private final Items items;

    /** Looks through the whole book. */
    @Activate
    public UsesVerb(@Reference IngredientMerges merges, @Reference Items items) {
        this.merges = merges;
        this.items = items;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("uses", "say where an ingredient or made item is named", "ITEM");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        String id = call.arguments().get(0);
        Item item = items.find(id)
                .orElseThrow(
                        () -> VerbException.wrongCall("There is no item “" + id + "”; look for its id with items."));
        List<Mention> mentions = merges.mentions(id);
        TextTable table = new TextTable("kind", "id", "where");
        mentions.forEach(mention -> table.row(mention.kind(), mention.id(), mention.text()));
        List<String> lines = new ArrayList<>(table.lines());
        if (mentions.isEmpty()) {
            lines.add(item.name() + " is named nowhere else.");
        }
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("item", id);
        json.put("uses", MentionReport.json(mentions));
        return Report.done(json, lines);
    }
}
