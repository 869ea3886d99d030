package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.SchemaWords;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * The schema of the whole form, put together from those of its sections. Shared words stand in it once; what a section
 * defines for itself gets the section's name in front, so that two sections may use the same word.
 */
public final class PublishedSchema {
    private static final String DEFINITIONS = "$defs";
    private static final String REFERENCE = "#/$defs/";

    private PublishedSchema() {}

    /** The schema of the form with these sections. */
    public static ObjectNode of(Collection<ExchangeSection> sections) {
        ObjectNode whole = JsonNodeFactory.instance.objectNode();
        whole.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        whole.put("title", "Etamine exchange form " + SourceReader.VERSION);
        whole.put("description", "One kitchen. Sections that are not described here are kept as they are.");
        whole.put("type", "object");
        ObjectNode members = whole.putObject("properties");
        members.putObject("etamine").put("description", "The form's version.").put("const", SourceReader.VERSION);
        ObjectNode definitions = JsonNodeFactory.instance.objectNode();
        definitions.setAll((ObjectNode) SchemaWords.definitions());
        sections.stream()
                .sorted(Comparator.comparing(ExchangeSection::name, SectionOrder.IN_FILE))
                .forEach(section -> add(section, members, definitions));
        whole.putArray("required").add("etamine");
        whole.set(DEFINITIONS, definitions);
        return whole;
    }

    private static void add(ExchangeSection section, ObjectNode members, ObjectNode definitions) {
        ObjectNode schema = ((ObjectNode) Json.parse(section.schema())).deepCopy();
        ObjectNode own = schema.withObjectProperty(DEFINITIONS);
        own.remove(List.copyOf(SchemaWords.definitions().properties().stream()
                .map(Map.Entry::getKey)
                .toList()));
        rename(schema, section.name(), own);
        own.properties()
                .forEach(definition ->
                        definitions.set(section.name() + '.' + definition.getKey(), definition.getValue()));
        schema.remove(DEFINITIONS);
        schema.remove("$schema");
        members.set(section.name(), schema);
    }

    private static void rename(JsonNode node, String section, ObjectNode own) {
        if (node instanceof ObjectNode object) {
            String reference = object.path("$ref").asText();
            if (reference.startsWith(REFERENCE) && own.has(reference.substring(REFERENCE.length()))) {
                String name = section + '.' + reference.substring(REFERENCE.length());
                object.set("$ref", TextNode.valueOf(REFERENCE + name));
            }
        }
        node.forEach(child -> rename(child, section, own));
    }
}
