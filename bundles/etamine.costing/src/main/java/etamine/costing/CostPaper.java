package etamine.costing;

import etamine.base.Printout;
import java.io.IOException;
import java.nio.file.Path;
import org.osgi.annotation.versioning.ProviderType;

/** Something costing has put on paper. Thread-safe; slow enough to be called in the background. */
@ProviderType
public interface CostPaper {

    /** The page, to look at and to print. */
    Printout printout();

    /**
     * Writes it to a file; the file is complete or absent. The ending says how: {@code .pdf} and {@code .html} the page,
     * {@code .csv} and {@code .xlsx} the table alone.
     *
     * @throws IllegalArgumentException if the file has another ending; the message says which there are
     */
    void write(Path file) throws IOException;
}
