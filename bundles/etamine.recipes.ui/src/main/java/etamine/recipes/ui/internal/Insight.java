package etamine.recipes.ui.internal;

import etamine.recipes.AllergenRollUp;
import etamine.recipes.Cards;
import etamine.recipes.RecipePhotos;
import etamine.recipes.RiverPapers;
import etamine.recipes.Rivers;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What is known of a recipe through everything in it.
 *
 * @param allergens allergens and diets
 * @param rivers what flows in and falls away
 * @param riverPapers lays rivers out for paper, while papers can be written
 * @param cards lays the allergens of the menu out for paper, while papers can be written
 * @param photos keeps photos, while pictures can be read
 */
record Insight(
        AllergenRollUp allergens,
        Rivers rivers,
        Supplier<Optional<RiverPapers>> riverPapers,
        Supplier<Optional<Cards>> cards,
        Supplier<Optional<RecipePhotos>> photos) {

    /** Without photos. */
    Insight(
            AllergenRollUp allergens,
            Rivers rivers,
            Supplier<Optional<RiverPapers>> riverPapers,
            Supplier<Optional<Cards>> cards) {
        this(allergens, rivers, riverPapers, cards, Optional::empty);
    }
}
