package etamine.kitchen.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Exemption;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.storage.Book;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.List;

/**
 * A section whose entries are the documents of the shelf of the same name, as they are: what is loaded is what is
 * dumped, unknown members included. Nobody refers to its entries.
 */
@Exemption(
        rule = "exported-types",
        because = "to be extended by sections of all modules, which may not share code otherwise")
public abstract class DocumentSection implements ExchangeSection {
    private final Book book;
    private final String name;
    private final String module;

    /**
     * A section of the open book.
     *
     * @param book the open book
     * @param name the section and the shelf; its schema is the resource {@code /schema/NAME.json} of the subclass
     * @param module the module it belongs to
     */
    protected DocumentSection(Book book, String name, String module) {
        this.book = book;
        this.name = name;
        this.module = module;
    }

    /** The identifier of an entry; an {@link IllegalArgumentException} when the entry cannot be understood. */
    protected abstract String understand(ObjectNode entry);

    /** What is wrong with an understood entry beside the others. */
    protected abstract List<Trouble> check(ObjectNode entry, Facts facts);

    @Override
    public final String name() {
        return name;
    }

    @Override
    public final String module() {
        return module;
    }

    @Override
    public final String schema() {
        return SchemaWords.schema(getClass(), "/schema/" + name + ".json");
    }

    @Override
    public final void recall(Facts facts) {
        // nobody refers to its entries
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
        return dump(book, name);
    }

    /** The documents of a shelf as a section, in the order of their ids; missing when there are none. */
    public static JsonNode dump(Book book, String shelf) {
        List<Document> documents = book.shelf(shelf).all();
        if (documents.isEmpty()) {
            return MissingNode.getInstance();
        }
        ArrayNode array = EntryJson.empty().arrayNode();
        documents.forEach(document -> array.add(EntryJson.read(document.json())));
        return array;
    }

    private ExchangeEntry entry(String pointer, ObjectNode node) {
        try {
            String id = understand(node);
            return new ReadEntry(
                    pointer,
                    id,
                    List.of(),
                    facts -> check(node, facts),
                    transaction -> transaction.save(name, id, Document.ANY, node.toString()));
        } catch (IllegalArgumentException wrong) {
            return refused(pointer, wrong);
        }
    }

    /** An entry that only says why it could not be understood. */
    public static ExchangeEntry refused(String pointer, IllegalArgumentException wrong) {
        if (wrong instanceof EntryTroubles several) {
            return ReadEntry.refused(pointer, "", several.troubles());
        }
        String why = String.valueOf(wrong.getMessage());
        String capital = Character.toUpperCase(why.charAt(0)) + why.substring(1);
        String sentence = capital.endsWith(".") ? capital : capital + ".";
        return ReadEntry.refused(pointer, "", List.of(new Trouble("", sentence)));
    }
}
