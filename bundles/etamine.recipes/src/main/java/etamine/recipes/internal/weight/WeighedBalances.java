package etamine.recipes.internal.weight;

import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Balances;
import etamine.recipes.MassBalance;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.RecipeView;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Balances recipes by what their items weigh. */
@Component
public final class WeighedBalances implements Balances {
    private final RecipeView view;

    /** Weighs with those items. */
    @Activate
    public WeighedBalances(@Reference RecipeShelf shelf, @Reference KnownItems known, @Reference MadeItems made) {
        view = new RecipeView(shelf, known, made);
    }

    @Override
    public MassBalance of(Recipe recipe) {
        return BatchWeights.of(recipe, view.beside(recipe).items());
    }
}
