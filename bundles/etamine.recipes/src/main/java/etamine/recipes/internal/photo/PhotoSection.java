package etamine.recipes.internal.photo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.documents.Picture;
import etamine.documents.Pictures;
import etamine.documents.Pictures.Taken;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.exchange.ReadEntry;
import etamine.kitchen.exchange.SchemaWords;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.internal.NamedPhotos;
import etamine.storage.Book;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The section {@code photos} of the exchange form; its entries are the documents of the shelf, as they are. */
@Component
public final class PhotoSection implements ExchangeSection {
    private static final String MODULE = "etamine.recipes";

    private final Book book;
    private final Pictures pictures;

    /** The section of that book. */
    @Activate
    public PhotoSection(@Reference Book book, @Reference Pictures pictures) {
        this.book = book;
        this.pictures = pictures;
    }

    @Override
    public String name() {
        return NamedPhotos.SHELF;
    }

    @Override
    public String module() {
        return MODULE;
    }

    @Override
    public String schema() {
        return SchemaWords.schema(PhotoSection.class, "/schema/photos.json");
    }

    @Override
    public Set<Class<?>> declares() {
        return Set.of(NamedPhotos.Known.class);
    }

    @Override
    public void recall(Facts facts) {
        book.shelf(NamedPhotos.SHELF).ids().forEach(id -> declare(facts, id));
    }

    private static void declare(Facts facts, String id) {
        facts.put(NamedPhotos.Known.class, id, new NamedPhotos.Known(id));
    }

    @Override
    public List<ExchangeEntry> read(JsonNode section, Facts facts) {
        List<ExchangeEntry> entries = new ArrayList<>();
        for (int i = 0; i < section.size(); i++) {
            if (section.get(i) instanceof ObjectNode node) {
                entries.add(entry("/" + i, node, facts));
            }
        }
        return entries;
    }

    private ExchangeEntry entry(String pointer, ObjectNode node, Facts facts) {
        EntryReader reader = new EntryReader(node);
        String id = reader.needed("id");
        picture(reader);
        if (!id.isEmpty()) {
            declare(facts, id);
        }
        return new ReadEntry(
                pointer,
                id,
                reader.troubles(),
                beside -> List.of(),
                beside -> doubts(id, beside),
                transaction -> transaction.save(NamedPhotos.SHELF, id, Document.ANY, node.toString()));
    }

    private void picture(EntryReader reader) {
        Taken taken = pictures.look(reader.text("data"));
        if (taken instanceof Taken.Refused refused) {
            reader.trouble("data", refused.text());
            return;
        }
        Picture picture = ((Taken.Ready) taken).picture();
        size(reader, "width", picture.width());
        size(reader, "height", picture.height());
    }

    private static void size(EntryReader reader, String member, int real) {
        if (reader.has(member) && reader.whole(member, real) != real) {
            reader.trouble(
                    member, "The picture has a " + member + " of " + real + " pixels; write that, or leave it out.");
        }
    }

    private static List<Trouble> doubts(String id, Facts facts) {
        boolean used = facts.all(Recipe.class).values().stream()
                .anyMatch(recipe -> recipe.photo().filter(id::equals).isPresent());
        return used
                ? List.of()
                : List.of(new Trouble("", "No recipe has this photo; name it in one as its photo, or leave it out."));
    }

    @Override
    public boolean large() {
        return true;
    }

    @Override
    public void dumpEach(Consumer<JsonNode> entries) {
        for (String id : book.shelf(NamedPhotos.SHELF).ids()) {
            book.shelf(NamedPhotos.SHELF)
                    .get(id)
                    .ifPresent(document -> entries.accept(EntryJson.read(document.json())));
        }
    }

    @Override
    public JsonNode dump() {
        ArrayNode section = EntryJson.empty().arrayNode();
        dumpEach(section::add);
        return section.isEmpty() ? MissingNode.getInstance() : section;
    }
}
