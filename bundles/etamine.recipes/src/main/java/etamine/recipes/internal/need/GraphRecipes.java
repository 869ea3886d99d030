package etamine.recipes.internal.need;

import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.recipe.Requirement;
import etamine.measures.Quantity;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.RecipeShelf;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The recipes of the open book, answered from their graph. */
@Component
public final class GraphRecipes implements Recipes {
    private final RecipeShelf shelf;
    private final KnownItems known;
    private final MadeItems made;

    /** The recipes on that shelf. */
    @Activate
    public GraphRecipes(@Reference RecipeShelf shelf, @Reference KnownItems known, @Reference MadeItems made) {
        this.shelf = shelf;
        this.known = known;
        this.made = made;
    }

    @Override
    public Map<String, Recipe> all() {
        return shelf.graph().recipes();
    }

    @Override
    public Optional<Recipe> find(String id) {
        return Optional.ofNullable(all().get(id));
    }

    @Override
    public List<Recipe> inOrder() {
        return shelf.graph().inOrder();
    }

    @Override
    public List<Recipe> inOrderAsOf(Instant at) {
        return shelf.graphAsOf(at).inOrder();
    }

    @Override
    public Optional<Instant> firstWritten(String id) {
        return shelf.firstWritten(id);
    }

    @Override
    public Optional<Recipe> maker(String item) {
        return shelf.graph().maker(item);
    }

    @Override
    public List<Recipe> usersOf(String item) {
        return shelf.graph().usersOf(item);
    }

    @Override
    public Requirement require(Map<String, Quantity> wanted, Map<String, Quantity> available) {
        return new Explosion(shelf.graph(), ItemView.of(known, made)).require(wanted, available);
    }
}
