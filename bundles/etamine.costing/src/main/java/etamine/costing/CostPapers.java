package etamine.costing;

import java.io.IOException;
import java.nio.file.Path;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Writes what costing knows to files. The ending of the file says how: {@code .pdf} and {@code .html} a page to read,
 * {@code .csv} and {@code .xlsx} the table alone. Thread-safe; every method throws an {@link IllegalArgumentException}
 * whose message says what to do when the ending is another one or the module that writes papers is not installed.
 */
@ProviderType
public interface CostPapers {

    /** Whether papers can be written at all: whether the module that lays them out is there. */
    boolean ready();

    /** The costing sheet of a recipe: every line, its price and where it comes from, and what the plate comes to. */
    void costingSheet(String recipe, Path file) throws IOException;

    /** All plates and drinks on the menu with price, cost, food-cost percentage and contribution. */
    void priceList(Path file) throws IOException;

    /** A menu analysis. */
    void menu(MenuReport report, Path file) throws IOException;

    /** A statement. */
    void statement(Statement statement, Path file) throws IOException;

    /** A butcher's test sheet. */
    void butcher(ButcherSheet sheet, Path file) throws IOException;
}
