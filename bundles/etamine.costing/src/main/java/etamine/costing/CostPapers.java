package etamine.costing;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** Puts what costing knows on paper and into tables. There while the module that lays papers out is. Thread-safe. */
@ProviderType
public interface CostPapers {

    /**
     * The costing sheet of a recipe: every line, its price and where it comes from, and what the plate comes to.
     *
     * @throws IllegalArgumentException if there is no such recipe; the message says what to do
     */
    CostPaper costingSheet(String recipe);

    /** All plates and drinks on the menu with price, cost, food-cost percentage and contribution. */
    CostPaper priceList();

    /** A menu analysis. */
    CostPaper menu(MenuReport report);

    /** A statement. */
    CostPaper statement(Statement statement);

    /** The food cost of some weeks. */
    CostPaper weeks(List<WeekCost> weeks);

    /** A butcher's test sheet. */
    CostPaper butcher(ButcherSheet sheet);
}
