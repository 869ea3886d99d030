package etamine.book.internal.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.ExchangeSection;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** The sections of a book on their way into a file, in their order. Large ones are never held at once. Used once. */
final class DumpedSections {
    private final Map<String, JsonNode> held = new TreeMap<>(SectionOrder.IN_FILE);
    private final Map<String, ExchangeSection> large = new TreeMap<>(SectionOrder.IN_FILE);
    private final Map<String, Integer> counts = new LinkedHashMap<>();

    /**
     * What the sections have and what is kept beside them.
     *
     * @param kept sections that no module owns, and parts of sections that did not fit
     */
    DumpedSections(List<ExchangeSection> sections, Map<String, JsonNode> kept) {
        held.putAll(kept);
        for (ExchangeSection section : sections) {
            if (section.large() && !kept.containsKey(section.name())) {
                large.put(section.name(), section);
            } else {
                hold(section);
            }
        }
    }

    private void hold(ExchangeSection section) {
        JsonNode value = section.dump();
        if (!value.isMissingNode()) {
            held.merge(section.name(), value, KeptShelf::join);
        }
    }

    /** The whole as one tree. */
    ObjectNode whole() {
        large.values().forEach(this::hold);
        ObjectNode form = JsonNodeFactory.instance.objectNode().put("etamine", SourceReader.VERSION);
        held.forEach(form::set);
        return form;
    }

    /** Writes the whole as one object. */
    void write(JsonGenerator to) throws IOException {
        SortedSet<String> order = new TreeSet<>(SectionOrder.IN_FILE);
        order.addAll(held.keySet());
        order.addAll(large.keySet());
        to.writeStartObject();
        to.writeStringField("etamine", SourceReader.VERSION);
        for (String name : order) {
            if (held.containsKey(name)) {
                to.writeFieldName(name);
                Json.MAPPER.writeTree(to, held.get(name));
                counts.put(name, KeptShelf.count(held.get(name)));
            } else {
                writeEach(to, name);
            }
        }
        to.writeEndObject();
    }

    private void writeEach(JsonGenerator to, String name) throws IOException {
        try {
            large.get(name).dumpEach(entry -> writeEntry(to, name, entry));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        if (counts.containsKey(name)) {
            to.writeEndArray();
        }
    }

    /** A section without entries is not in the file, so the list begins with the first. */
    private void writeEntry(JsonGenerator to, String name, JsonNode entry) {
        try {
            if (!counts.containsKey(name)) {
                to.writeArrayFieldStart(name);
            }
            Json.MAPPER.writeTree(to, entry);
            counts.merge(name, 1, Integer::sum);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How many entries each section that was written has. */
    Map<String, Integer> counts() {
        return counts;
    }
}
