package etamine.kitchen.cost;

import etamine.base.Explanation;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** What things cost, through the whole recipe graph. Thread-safe; always of the book as it is now. */
@ProviderType
public interface Costs {

    /** The cost of a recipe; empty when there is no such recipe. */
    Optional<RecipeCost> recipe(String id);

    /** The costs of all recipes, by id. */
    Map<String, RecipeCost> recipes();

    /** The cost of an item as purchased or as made; empty when no price is known at all. */
    Optional<ItemCost> item(String id);

    /** How a recipe's cost comes about, opened down to the prices. */
    Optional<Explanation> explain(String recipe);
}
