package etamine.recipes.internal;

import etamine.base.Subject;
import etamine.kitchen.find.Finder;
import etamine.kitchen.find.NameMatch;
import etamine.kitchen.recipe.Recipe;
import java.util.Comparator;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Finds recipes by name. */
@Component
public final class RecipeFinder implements Finder {
    private final RecipeShelf shelf;

    /** Finds on that shelf. */
    @Activate
    public RecipeFinder(@Reference RecipeShelf shelf) {
        this.shelf = shelf;
    }

    private record Hit(Recipe recipe, int rank) {}

    @Override
    public List<Found> find(String text, int atMost) {
        NameMatch match = new NameMatch(text);
        return shelf.graph().recipes().values().stream()
                .flatMap(recipe -> match.rank(recipe.name()).stream().mapToObj(rank -> new Hit(recipe, rank)))
                .sorted(Comparator.comparingInt(Hit::rank).thenComparing(hit -> hit.recipe.name()))
                .limit(atMost)
                .map(Hit::recipe)
                .map(recipe ->
                        new Found(new Subject("recipe", recipe.id()), recipe.name(), RecipeForm.word(recipe.kind())))
                .toList();
    }
}
