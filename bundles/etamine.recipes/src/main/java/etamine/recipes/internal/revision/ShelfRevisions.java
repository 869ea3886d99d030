package etamine.recipes.internal.revision;

import etamine.base.Problem;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Change;
import etamine.recipes.Difference;
import etamine.recipes.Revision;
import etamine.recipes.Revisions;
import etamine.recipes.internal.NamedPhotos;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.book.ShelvedRecipes;
import etamine.recipes.internal.text.CardText;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Revisions as the shelf of the book has kept them. */
@Component
public final class ShelfRevisions implements Revisions {
    private final ShelvedRecipes recipes;
    private final RecipeShelf shelf;
    private final CardText cards;

    /** The revisions on that shelf. */
    @Activate
    public ShelfRevisions(@Reference ShelvedRecipes recipes, @Reference RecipeShelf shelf, @Reference CardText cards) {
        this.recipes = recipes;
        this.shelf = shelf;
        this.cards = cards;
    }

    @Override
    public List<Revision> of(String recipe) {
        List<Revision> revisions = new ArrayList<>();
        history(recipe).forEach(document -> revisions.add(revision(document)));
        Collections.reverse(revisions);
        return List.copyOf(revisions);
    }

    private List<Document> history(String recipe) {
        return shelf.book().shelf(RecipeShelf.NAME).history(recipe);
    }

    private Revision revision(Document document) {
        return new Revision(document.revision(), document.at(), document.label(), document.removed(), recipe(document));
    }

    private Optional<Recipe> recipe(Document document) {
        if (document.removed()) {
            return Optional.empty();
        }
        try {
            return Optional.of(shelf.form().read(document.id(), document.json()));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    @Override
    public List<Difference> between(Recipe older, Recipe newer) {
        return new RecipeDifference(cards.lines(), older, newer).all();
    }

    @Override
    public Change restore(String id, long number) {
        Optional<Document> found = history(id).stream()
                .filter(document -> document.revision() == number)
                .findFirst();
        Optional<Recipe> recipe = found.flatMap(this::recipe);
        if (found.isEmpty() || recipe.isEmpty()) {
            return refused(id, "There is no revision " + number + " of “" + id + "” that can be read; choose another.");
        }
        List<Problem> senseless = recipes.senseless(recipe.get());
        if (!senseless.isEmpty()) {
            return new Change.Refused(senseless);
        }
        String label = "Bring back revision " + number + " of " + recipe.get().name();
        long expected = recipes.revision(id);
        String json = found.get().json();
        long revision = shelf.book().write(label, transaction -> {
            new NamedPhotos(shelf).follow(transaction, id, recipe.get().photo());
            return transaction.save(RecipeShelf.NAME, id, expected, json);
        });
        return new Change.Done(id, revision);
    }

    private static Change refused(String id, String text) {
        return new Change.Refused(List.of(Problem.error("no-revision", RecipeShelf.NAME + "/" + id, text)));
    }
}
