package etamine.diary.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Reads and makes JSON nodes; numbers keep every digit. */
final class Json {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private Json() {}

    static ObjectNode object(String json) {
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

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    static String text(JsonNode node, String member) {
        JsonNode value = node.path(member);
        if (!value.isTextual()) {
            throw new IllegalArgumentException("“" + member + "” is missing or not text");
        }
        return value.textValue();
    }
}
