package etamine.book.internal.exchange;

import etamine.kitchen.exchange.LoadResult.Rejected;
import java.nio.file.Path;

/**
 * One thing wrong in a section.
 *
 * @param part the section
 * @param pointer where in the section of all files together
 * @param file the file it stands in
 * @param inFile where in that file
 * @param problem what to do
 */
record Fault(Part part, String pointer, Path file, String inFile, String problem) {

    Rejected rejected() {
        return new Rejected(file, inFile, problem);
    }
}
