package etamine.recipes;

import etamine.kitchen.recipe.Recipe;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The allergens and diets of everything, through recipes of any depth and through substitutes. Unknown is not absent:
 * what nobody has established of one ingredient nobody knows of the plate. Thread-safe; worked out anew only when a
 * recipe or what is known of an item has changed, cheap otherwise.
 */
@ProviderType
public interface AllergenRollUp {

    /** Every recipe of the book by id, in the order of ids. */
    Map<String, Rolled> recipes();

    /** A recipe as it is given, saved or not, of the items as they are in the book. */
    Rolled of(Recipe recipe);

    /** An item, bought or made. */
    Optional<Rolled> item(String id);

    /** Why a recipe stands as it does. */
    AllergenReasons why(Recipe recipe);

    /** Why an item stands as it does. */
    Optional<AllergenReasons> whyItem(String id);
}
