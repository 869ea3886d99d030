package etamine.diary.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.exchange.SchemaWords;
import etamine.storage.Book;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.List;

/** A section whose entries are the documents of the shelf of the same name, as they are. */
abstract class DocumentSection implements ExchangeSection {
    private final Book book;
    private final String name;

    DocumentSection(Book book, String name) {
        this.book = book;
        this.name = name;
    }

    /** The identifier of an entry; throws {@link IllegalArgumentException} when the entry cannot be understood. */
    abstract String understand(ObjectNode entry);

    /** What is wrong with an understood entry beside the others. */
    abstract List<Trouble> check(ObjectNode entry, Facts facts);

    @Override
    public final String name() {
        return name;
    }

    @Override
    public final String module() {
        return "etamine.diary";
    }

    @Override
    public final String schema() {
        return SchemaWords.schema(DocumentSection.class, "/schema/" + name + ".json");
    }

    @Override
    public final void recall(Facts facts) {
        // nobody refers to entries of the diary
    }

    @Override
    public final List<ExchangeEntry> read(JsonNode section, Facts facts) {
        List<ExchangeEntry> entries = new ArrayList<>();
        for (int i = 0; i < section.size(); i++) {
            if (section.get(i) instanceof ObjectNode node) {
                entries.add(entry("/" + i, node));
            }
        }
        return entries;
    }

    @Override
    public final JsonNode dump() {
        List<Document> documents = book.shelf(name).all();
        if (documents.isEmpty()) {
            return MissingNode.getInstance();
        }
        ArrayNode array = Json.object().arrayNode();
        documents.forEach(document -> array.add(Json.object(document.json())));
        return array;
    }

    private ExchangeEntry entry(String pointer, ObjectNode node) {
        try {
            String id = understand(node);
            return new ReadEntry(pointer, id, List.of(), facts -> check(node, facts),
                    transaction -> transaction.save(name, id, Document.ANY, node.toString()));
        } catch (IllegalArgumentException wrong) {
            return refused(pointer, wrong);
        }
    }

    /** An entry that says why it could not be understood. */
    static ExchangeEntry refused(String pointer, IllegalArgumentException wrong) {
        String why = String.valueOf(wrong.getMessage());
        String capital = Character.toUpperCase(why.charAt(0)) + why.substring(1);
        String sentence = capital.endsWith(".") ? capital : capital + ".";
        return ReadEntry.refused(pointer, "", List.of(new Trouble("", sentence)));
    }
}
