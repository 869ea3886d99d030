package etamine.kitchen.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Exemption;

/** Documents as JSON objects, in which numbers keep every digit they were written with. Thread-safe. */
@Exemption(
        rule = "exported-types",
        because = "sections of all modules read members alike, and modules may not share code otherwise")
public final class EntryJson {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private EntryJson() {}

    /** The object in the text; an {@link IllegalArgumentException} when it is anything else. */
    public static ObjectNode read(String json) {
        try {
            JsonNode node = MAPPER.readTree(json);
            if (node instanceof ObjectNode object) {
                return object;
            }
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException("not JSON: " + broken.getOriginalMessage(), broken);
        }
        throw new IllegalArgumentException("not a JSON object");
    }

    /** An object without members. */
    public static ObjectNode empty() {
        return MAPPER.createObjectNode();
    }

    /** The member's text; an {@link IllegalArgumentException} when it is absent or no text. */
    public static String text(JsonNode node, String member) {
        JsonNode value = node.path(member);
        if (!value.isTextual()) {
            throw new IllegalArgumentException("“" + member + "” is missing or not text");
        }
        return value.textValue();
    }

    /** Writes a text member unless it is empty. */
    public static void put(ObjectNode onto, String member, String text) {
        if (!text.isEmpty()) {
            onto.put(member, text);
        }
    }

    /** Writes a list member unless it is empty. */
    public static void put(ObjectNode onto, String member, ArrayNode list) {
        if (!list.isEmpty()) {
            onto.set(member, list);
        }
    }
}
