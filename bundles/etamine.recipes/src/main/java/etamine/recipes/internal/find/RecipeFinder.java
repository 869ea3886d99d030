package etamine.recipes.internal.find;

import etamine.base.Subject;
import etamine.kitchen.find.Finder;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.RecipeSearch;
import etamine.recipes.RecipeSearch.Hit;
import etamine.recipes.RecipeSearch.Wanted;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.form.RecipeForm;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Finds recipes by name, by what is in them and by their steps; those put away are left out. */
@Component
public final class RecipeFinder implements Finder {
    private final RecipeShelf shelf;
    private final RecipeSearch search;

    /** Finds on that shelf. */
    @Activate
    public RecipeFinder(@Reference RecipeShelf shelf, @Reference RecipeSearch search) {
        this.shelf = shelf;
        this.search = search;
    }

    @Override
    public List<Found> find(String text, int atMost) {
        return search.find(Wanted.words(text, atMost)).stream().map(this::found).toList();
    }

    private Found found(Hit hit) {
        Recipe recipe = shelf.graph().recipes().get(hit.recipe());
        String kind = recipe == null ? "" : RecipeForm.word(recipe.kind());
        String hint = hit.excerpt().isEmpty() ? kind : kind + ", " + hit.excerpt();
        return new Found(new Subject("recipe", hit.recipe()), hit.name(), hint);
    }
}
