package etamine.console.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A report's machine form as text. Decimals become plain strings, so that no reader turns an amount into a double. */
final class JsonText {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private JsonText() {}

    static String of(Object value) {
        DefaultPrettyPrinter lines = new DefaultPrettyPrinter();
        lines.indentArraysWith(new DefaultIndenter("  ", "\n"));
        lines.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        try {
            return MAPPER.writer(lines).writeValueAsString(node(value));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static JsonNode node(@Nullable Object value) {
        if (value == null) {
            return NODES.nullNode();
        }
        if (value instanceof JsonNode node) {
            return node;
        }
        if (value instanceof Map<?, ?> map) {
            ObjectNode object = NODES.objectNode();
            map.forEach((key, each) -> object.set(String.valueOf(key), node(each)));
            return object;
        }
        if (value instanceof Iterable<?> all) {
            ArrayNode array = NODES.arrayNode();
            all.forEach(each -> array.add(node(each)));
            return array;
        }
        if (value instanceof Optional<?> perhaps) {
            return perhaps.isPresent() ? node(perhaps.get()) : NODES.nullNode();
        }
        return scalar(value);
    }

    private static JsonNode scalar(Object value) {
        if (value instanceof Boolean flag) {
            return NODES.booleanNode(flag);
        }
        if (value instanceof Integer || value instanceof Long || value instanceof Short) {
            return NODES.numberNode(((Number) value).longValue());
        }
        if (value instanceof BigDecimal amount) {
            return NODES.textNode(amount.toPlainString());
        }
        if (value instanceof Double || value instanceof Float) {
            return NODES.textNode(
                    BigDecimal.valueOf(((Number) value).doubleValue()).toPlainString());
        }
        return NODES.textNode(String.valueOf(value));
    }
}
