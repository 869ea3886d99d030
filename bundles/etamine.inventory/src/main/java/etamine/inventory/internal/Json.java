package etamine.inventory.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** JSON objects as they stand in documents and details. */
final class Json {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Json() {}

    static ObjectNode parse(String json) {
        try {
            JsonNode node = MAPPER.readTree(json);
            if (node instanceof ObjectNode object) {
                return object;
            }
        } catch (JsonProcessingException unreadable) {
            throw new IllegalArgumentException("not JSON: " + unreadable.getOriginalMessage(), unreadable);
        }
        throw new IllegalArgumentException("not a JSON object");
    }

    static ObjectNode empty() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** Adds a text member unless it is empty. */
    static ObjectNode with(ObjectNode onto, String member, String text) {
        return text.isEmpty() ? onto : onto.put(member, text);
    }

    /** The object as the maps, lists, texts and numbers of a report. */
    static Object plain(JsonNode node) {
        return MAPPER.convertValue(node, Object.class);
    }
}
