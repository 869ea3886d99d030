package etamine.ingredients.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.ingredients.internal.IngredientShelf;
import etamine.ingredients.internal.MergedItems;
import etamine.ingredients.internal.ResourceStarters;
import etamine.ingredients.internal.ShelvedIngredients;
import etamine.ingredients.internal.WholeBookMerges;
import etamine.testing.SetKitchen;
import etamine.testing.VolatileBook;
import org.junit.jupiter.api.BeforeEach;

/** A list of ingredients with celeriac on it, and the model of its bench. */
abstract class CeleriacKitchen {
    final VolatileBook book = new VolatileBook();
    final IngredientShelf shelf = new IngredientShelf(book);
    final ShelvedIngredients list = new ShelvedIngredients(shelf);
    final MergedItems items = new MergedItems(shelf);
    final Known known = new Known(
            list,
            items,
            new WholeBookMerges(shelf, list),
            new ResourceStarters(shelf),
            SetKitchen.at("2026-11-24T09:00:00Z"),
            Known.Others.NONE);
    final IngredientsModel model = new IngredientsModel(known);

    @BeforeEach
    void celeriac() {
        model.add("Celeriac");
    }

    Ingredient now() {
        return list.find("celeriac").orElseThrow();
    }

    void save(Attempt attempt) {
        assertThat(attempt).isInstanceOf(Attempt.Edit.class);
        assertThat(model.save("celeriac", ((Attempt.Edit) attempt).edit())).isInstanceOf(Change.Done.class);
    }
}
