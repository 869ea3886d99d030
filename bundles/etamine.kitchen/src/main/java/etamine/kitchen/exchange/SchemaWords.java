package etamine.kitchen.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Exemption;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The definitions that the schemas of all sections share: {@code id}, {@code name}, {@code text}, {@code quantity},
 * {@code signedQuantity}, {@code pack}, {@code unit}, {@code ratio}, {@code percent}, {@code money}, {@code price},
 * {@code unitPrice}, {@code measures}, {@code date}, {@code instant}, {@code time}, {@code days}, {@code duration},
 * {@code weekday}. A section's schema refers to them as {@code #/$defs/quantity}. The {@code description} of a
 * definition is the sentence a person reads when a value does not fit it.
 */
@Exemption(
        rule = "exported-types",
        because = "the shared words of the form are one text, not a service that could differ")
public final class SchemaWords {
    /** Where a section's own schema text names the definitions it uses. */
    private static final String DEFINITIONS = "$defs";

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final ObjectNode WORDS = words();

    private SchemaWords() {}

    /**
     * A section's schema from a resource, completed by the shared definitions, so that it stands by itself.
     *
     * @param owner a class of the module that holds the resource
     * @param resource its absolute name, such as {@code /schema/ingredients.json}
     */
    public static String schema(Class<?> owner, String resource) {
        return complete(text(owner, resource));
    }

    /** The same schema with the shared definitions beside its own; a section may not define a shared word anew. */
    public static String complete(String schema) {
        try {
            ObjectNode whole = (ObjectNode) JSON.readTree(schema);
            ObjectNode definitions = whole.withObjectProperty(DEFINITIONS);
            for (var own = definitions.fieldNames(); own.hasNext(); ) {
                String name = own.next();
                if (WORDS.has(name)) {
                    throw new IllegalArgumentException(
                            "The word " + name + " is shared; call this definition otherwise.");
                }
            }
            definitions.setAll(WORDS.deepCopy());
            return whole.toPrettyString();
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("This schema is not JSON: " + e.getOriginalMessage(), e);
        }
    }

    /** The shared definitions by name; a copy. */
    public static JsonNode definitions() {
        return WORDS.deepCopy();
    }

    private static ObjectNode words() {
        try {
            return (ObjectNode) JSON.readTree(text(SchemaWords.class, "/schema/words.json"));
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Class<?> owner, String resource) {
        try (InputStream in = owner.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalArgumentException(owner.getName() + " has no resource " + resource + ".");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
