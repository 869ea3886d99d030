package etamine.ingredients.internal;

import etamine.kitchen.item.ItemMentions.Mention;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Places that name an item, for machines. */
final class MentionReport {
    private MentionReport() {}

    static List<Map<String, Object>> json(List<Mention> mentions) {
        return mentions.stream().map(MentionReport::json).toList();
    }

    private static Map<String, Object> json(Mention mention) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", mention.kind());
        json.put("id", mention.id());
        json.put("text", mention.text());
        return json;
    }
}
