package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.exchange.SchemaWords;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.storage.Book;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A small section of things that may be made from other things; they may not go round in a circle. */
final class Pantry implements ExchangeSection {
    /** What the section declares. */
    record Thing(String id, List<String> from) {}

    private static final String SCHEMA = SchemaWords.complete("""
            {"type": "array", "items": {
              "type": "object",
              "properties": {
                "id": {"$ref": "#/$defs/id"},
                "amount": {"$ref": "#/$defs/quantity"},
                "price": {"$ref": "#/$defs/unitPrice"},
                "kind": {"enum": ["dry", "cold"]},
                "from": {"type": "array", "items": {"$ref": "#/$defs/id"}, "maxItems": 3},
                "since": {"$ref": "#/$defs/date"},
                "tested": {"type": "integer", "minimum": 0}
              },
              "patternProperties": {"^x-": true},
              "required": ["id"],
              "additionalProperties": false}}
            """);

    private final Book book;
    private final String name;

    Pantry(Book book, String name) {
        this.book = book;
        this.name = name;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String module() {
        return "etamine." + name;
    }

    @Override
    public String schema() {
        return SCHEMA;
    }

    @Override
    public Set<Class<?>> declares() {
        return Set.of(Thing.class);
    }

    @Override
    public void recall(Facts facts) {
        book.shelf(name).all().forEach(document -> declare(facts, Json.parse(document.json())));
    }

    private static Thing declare(Facts facts, JsonNode node) {
        List<String> from = new ArrayList<>();
        node.path("from").forEach(each -> from.add(each.asText()));
        Thing thing = new Thing(node.path("id").asText(), from);
        facts.put(Thing.class, thing.id(), thing);
        return thing;
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        List<ExchangeEntry> entries = new ArrayList<>();
        for (int i = 0; i < section.size(); i++) {
            if (!section.get(i).isNull()) {
                entries.add(read("/" + i, section.get(i), facts));
            }
        }
        return entries;
    }

    private ExchangeEntry read(String pointer, JsonNode node, Facts facts) {
        Thing thing = declare(facts, node);
        return new ReadEntry(
                pointer,
                thing.id(),
                unit(node),
                all -> check(thing, all),
                transaction -> transaction.save(name, thing.id(), Document.ANY, node.toString()));
    }

    private static List<Trouble> unit(JsonNode node) {
        if (node.has("amount")) {
            Quantity quantity = Quantity.parse(node.path("amount").asText());
            if (quantity.unit().dimension() == Dimension.WORD) {
                return List.of(new Trouble(
                        "/amount", "The unit " + quantity.unit().symbol() + " is unknown; say what it is."));
            }
        }
        return List.of();
    }

    private static List<Trouble> check(Thing thing, Facts facts) {
        List<Trouble> troubles = new ArrayList<>();
        for (int i = 0; i < thing.from().size(); i++) {
            if (facts.find(Thing.class, thing.from().get(i)).isEmpty()) {
                troubles.add(
                        new Trouble("/from/" + i, "There is no " + thing.from().get(i) + "; add it."));
            }
        }
        loop(thing, facts)
                .ifPresent(path -> troubles.add(new Trouble("/from", "This goes in a circle: " + path + ".")));
        return troubles;
    }

    private static Optional<String> loop(Thing thing, Facts facts) {
        Set<String> path = new LinkedHashSet<>(List.of(thing.id()));
        Thing at = thing;
        while (!at.from().isEmpty()) {
            Optional<Thing> next = facts.find(Thing.class, at.from().get(0));
            if (next.isEmpty()) {
                return Optional.empty();
            }
            at = next.get();
            if (!path.add(at.id())) {
                return Optional.of(String.join(" > ", path) + " > " + at.id());
            }
        }
        return Optional.empty();
    }

    @Override
    public JsonNode dump() {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        book.shelf(name).all().forEach(document -> array.add(Json.parse(document.json())));
        return array.isEmpty() ? MissingNode.getInstance() : array;
    }
}
