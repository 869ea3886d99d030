package etamine.catalogue.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.storage.Shelf;
import java.math.BigDecimal;

/** JSON objects as they stand on a shelf, and their single members; what is empty is left out. */
final class Members {
    private static final ObjectMapper JSON = new ObjectMapper();

    private Members() {}

    static ObjectNode parse(String json) {
        try {
            JsonNode node = JSON.readTree(json);
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

    static void text(ObjectNode onto, String member, String text) {
        if (text.isBlank()) {
            onto.remove(member);
        } else {
            onto.put(member, text);
        }
    }

    static void amount(ObjectNode onto, String member, BigDecimal amount) {
        if (amount.signum() == 0 && !onto.has(member)) {
            return;
        }
        onto.put(member, amount.toPlainString());
    }

    /** The object of that name, made when it is not there. */
    static ObjectNode object(ObjectNode onto, String member) {
        return onto.get(member) instanceof ObjectNode there ? there : onto.putObject(member);
    }

    /** Every document of a shelf as it is, by id; a missing node when there is none. */
    static JsonNode dump(Shelf shelf) {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        shelf.all().forEach(document -> all.add(parse(document.json())));
        return all.isEmpty() ? MissingNode.getInstance() : all;
    }
}
