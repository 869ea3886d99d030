package etamine.recipes.internal;

import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.recipe.Recipe;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Keeps the shelf of photos in step with the recipes that name them, whoever writes these: a photo that is named comes
 * back from the history of its shelf, one that nobody names any more goes, in the same transaction.
 */
public final class NamedPhotos {
    /** The shelf of photos and their section of the exchange form. */
    public static final String SHELF = "photos";

    private final RecipeShelf shelf;

    /** The photos of the recipes on that shelf. */
    public NamedPhotos(RecipeShelf shelf) {
        this.shelf = shelf;
    }

    /**
     * What a file or the book declares of a photo.
     *
     * @param id its identifier
     */
    public record Known(String id) {}

    /** Call within the transaction that writes a recipe; {@code photo} is the one it names from then on. */
    public void follow(Transaction transaction, String recipe, Optional<String> photo) {
        Map<String, Recipe> all = shelf.graph().recipes();
        Optional<String> before = Optional.ofNullable(all.get(recipe)).flatMap(Recipe::photo);
        if (before.equals(photo)) {
            return;
        }
        photo.ifPresent(id -> bringBack(transaction, id));
        before.filter(id -> all.values().stream()
                        .noneMatch(other -> !other.id().equals(recipe)
                                && other.photo().filter(id::equals).isPresent()))
                .filter(id -> present(transaction, id))
                .ifPresent(id -> transaction.remove(SHELF, id, Document.ANY));
    }

    private void bringBack(Transaction transaction, String id) {
        if (!present(transaction, id)) {
            shelf.book().shelf(SHELF).history(id).stream()
                    .filter(document -> !document.removed())
                    .reduce((earlier, later) -> later)
                    .ifPresent(last -> transaction.save(SHELF, id, Document.ANY, last.json()));
        }
    }

    private static boolean present(Transaction transaction, String id) {
        return transaction
                .get(SHELF, id)
                .filter(document -> !document.removed())
                .isPresent();
    }

    /** What is doubtful about the photo a recipe of a file names. */
    public static List<Trouble> doubts(Recipe recipe, Facts facts) {
        return recipe
                .photo()
                .filter(id ->
                        facts.covers(Known.class) && facts.find(Known.class, id).isEmpty())
                .map(id -> new Trouble("/photo", missing(recipe.name(), id)))
                .stream()
                .toList();
    }

    /** Says that a photo is not there. */
    public static String missing(String recipe, String photo) {
        return recipe + " names the photo “" + photo + "”, which is not there; load it, or add the photo again.";
    }
}
