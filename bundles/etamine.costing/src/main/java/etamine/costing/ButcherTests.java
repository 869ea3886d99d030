package etamine.costing;

import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The butcher's and the cooking-loss test of any recipe that turns a weight of one thing into weights of others.
 * Thread-safe, reads only.
 */
@ProviderType
public interface ButcherTests {

    /** Recipes that have a sheet: breakdowns by id, then others that take one bought weight apart or cook it. */
    List<String> recipes();

    /**
     * The sheet of a recipe.
     *
     * @param recipe its id
     * @param dealer a price to reckon with instead of the book's; empty for the book's alone
     * @param portion the size of a portion; empty for the recipe's own
     * @throws IllegalArgumentException if there is no such recipe or it makes nothing by weight; the message says what
     *     to do
     */
    ButcherSheet sheet(String recipe, Optional<UnitPrice> dealer, Optional<Quantity> portion);
}
