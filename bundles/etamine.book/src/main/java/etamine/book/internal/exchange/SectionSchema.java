package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.dialect.Dialects;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** A section's JSON Schema, made ready once, with its complaints in sentences that say what to do. Thread-safe. */
final class SectionSchema {
    private static final Map<String, SectionSchema> READY = new ConcurrentHashMap<>();
    private static final SchemaRegistry REGISTRY = SchemaRegistry.withDialect(
            Dialects.getDraft202012(),
            builder -> builder.schemaRegistryConfig(SchemaRegistryConfig.builder()
                    .formatAssertionsEnabled(true)
                    .preloadSchema(false)
                    .build()));

    private final JsonNode text;
    private final Schema schema;

    private SectionSchema(String text) {
        this.text = Json.parse(text);
        this.schema = REGISTRY.getSchema(this.text);
    }

    /** The schema of that text. */
    static SectionSchema of(String text) {
        return READY.computeIfAbsent(text, SectionSchema::new);
    }

    /** Everything that does not fit, each thing once. */
    List<Trouble> troubles(JsonNode value) {
        Set<Trouble> troubles = new LinkedHashSet<>();
        for (Error error : schema.validate(value)) {
            troubles.add(SchemaSentence.of(error, text));
        }
        troubles.addAll(Misspellings.in(value, text));
        return new ArrayList<>(troubles);
    }
}
