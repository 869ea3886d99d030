package etamine.recipes.internal.photo;

import etamine.base.Problem;
import etamine.documents.Picture;
import etamine.documents.Pictures;
import etamine.documents.Pictures.Taken;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.RecipeWriter;
import etamine.kitchen.recipe.Recipes;
import etamine.recipes.Change;
import etamine.recipes.RecipeBook;
import etamine.recipes.RecipePhotos;
import etamine.recipes.internal.NamedPhotos;
import etamine.storage.Book;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Photos as documents on a shelf of the book, each read when it is asked for. */
@Component
public final class BookPhotos implements RecipePhotos {
    private final Book book;
    private final Recipes recipes;
    private final RecipeWriter writer;
    private final RecipeBook revisions;
    private final Pictures pictures;

    /** The photos of the recipes in that book. */
    @Activate
    public BookPhotos(
            @Reference Book book,
            @Reference Recipes recipes,
            @Reference RecipeWriter writer,
            @Reference RecipeBook revisions,
            @Reference Pictures pictures) {
        this.book = book;
        this.recipes = recipes;
        this.writer = writer;
        this.revisions = revisions;
        this.pictures = pictures;
    }

    @Override
    public Optional<Photo> find(String recipe) {
        return find(recipe, Integer.MAX_VALUE);
    }

    @Override
    public Optional<Photo> find(String recipe, int edge) {
        return recipes.find(recipe)
                .flatMap(Recipe::photo)
                .flatMap(id -> book.shelf(NamedPhotos.SHELF).get(id))
                .flatMap(document -> photo(document, edge));
    }

    private Optional<Photo> photo(Document document, int edge) {
        String data = EntryJson.read(document.json()).path("data").asText("");
        return ready(pictures.look(data))
                .flatMap(picture -> ready(pictures.within(picture, edge)))
                .map(picture -> PhotoEntry.photo(document.id(), document.json(), picture));
    }

    private static Optional<Picture> ready(Taken taken) {
        return taken instanceof Taken.Ready ready ? Optional.of(ready.picture()) : Optional.empty();
    }

    @Override
    public Change attach(String recipe, Path file, String text) {
        try {
            return attach(recipe, PictureFile.read(file), text);
        } catch (IOException unreadable) {
            return refused(recipe, PictureFile.sentence(file, unreadable));
        }
    }

    @Override
    public Change attach(String recipe, byte[] file, String text) {
        Taken taken = pictures.take(file);
        return taken instanceof Taken.Ready ready
                ? change(recipe, "photo", Optional.of(ready.picture()), said(text))
                : refused(recipe, ((Taken.Refused) taken).text());
    }

    @Override
    public Change remove(String recipe) {
        return change(recipe, "photo", Optional.empty(), "");
    }

    private Change change(String id, String what, Optional<Picture> picture, String text) {
        Optional<Recipe> recipe = recipes.find(id);
        if (recipe.isEmpty()) {
            return unknown(id);
        }
        String verb = picture.isEmpty() ? "Remove " : recipe.get().photo().isPresent() ? "Replace " : "Add ";
        try {
            book.write(verb + what + " of " + recipe.get().name(), transaction -> {
                picture.ifPresent(found -> keep(transaction, found, text));
                // read again: within a transaction nobody else can change it
                Recipe now = recipes.find(id).orElseThrow(() -> new IllegalArgumentException(gone(id)));
                writer.write(transaction, now.withPhoto(picture.map(PhotoEntry::id)));
                return now;
            });
            return new Change.Done(id, revisions.revision(id));
        } catch (IllegalArgumentException senseless) {
            return refused(id, String.valueOf(senseless.getMessage()));
        }
    }

    /** A picture that is there already keeps what is said of it, unless something else is said. */
    private static void keep(Transaction transaction, Picture picture, String text) {
        String id = PhotoEntry.id(picture);
        Optional<Document> present = transaction.get(NamedPhotos.SHELF, id).filter(document -> !document.removed());
        String json = present.map(
                        document -> text.isEmpty() ? document.json() : PhotoEntry.described(document.json(), text))
                .orElseGet(() -> PhotoEntry.of(picture, text).toString());
        transaction.save(NamedPhotos.SHELF, id, Document.ANY, json);
    }

    @Override
    public Change describe(String id, String text) {
        Optional<Recipe> recipe = recipes.find(id);
        Optional<Document> photo = recipe.flatMap(Recipe::photo)
                .flatMap(named -> book.shelf(NamedPhotos.SHELF).get(named));
        if (recipe.isEmpty() || photo.isEmpty()) {
            return recipe.isEmpty()
                    ? unknown(id)
                    : refused(id, none(recipe.get().name()));
        }
        Document document = photo.get();
        String json = PhotoEntry.described(document.json(), said(text));
        book.write(
                "Change text of photo of " + recipe.get().name(),
                transaction -> transaction.save(NamedPhotos.SHELF, document.id(), document.revision(), json));
        return new Change.Done(id, revisions.revision(id));
    }

    @Override
    public void save(String recipe, Path file) throws IOException {
        Photo photo = find(recipe).orElseThrow(() -> new IOException(none(recipe)));
        PictureFile.write(file, photo.bytes());
    }

    private static String said(String text) {
        String stripped = text.strip();
        return stripped.length() <= LONGEST_TEXT
                ? stripped
                : stripped.substring(0, stripped.offsetByCodePoints(0, LONGEST_TEXT / 2));
    }

    static String none(String recipe) {
        return recipe + " has no photo; add one first.";
    }

    private static Change unknown(String recipe) {
        return refused(recipe, gone(recipe));
    }

    private static String gone(String recipe) {
        return "There is no recipe “" + recipe + "” any more.";
    }

    private static Change refused(String recipe, String text) {
        return new Change.Refused(List.of(Problem.error("photo", "recipes/" + recipe, text)));
    }
}
