package etamine.kitchen.exchange;

import etamine.base.Progress;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.osgi.annotation.versioning.ProviderType;

/** Loads the exchange form into the open book and dumps the book as that form. Thread-safe; there while a book is open. */
@ProviderType
public interface Exchange {

    /**
     * Reads the files as one, checks all of it, and writes it in one transaction if there is nothing to reject.
     *
     * @param files what to load
     * @param terms how strict to be
     * @param progress where it says how far it is; a cancelled load leaves the book unchanged
     * @return what was written, kept and rejected; {@link LoadResult#written} says whether the book changed
     */
    LoadResult load(List<Path> files, LoadTerms terms, Progress progress);

    /**
     * Loads what is already in memory, all of it or nothing.
     *
     * @param name where it comes from, for the label of undo and the places of problems
     * @param form the exchange form as JSON text, made by this program
     * @param progress where it says how far it is; a cancelled load leaves the book unchanged
     * @throws IllegalArgumentException if the text is not a JSON object
     */
    LoadResult load(String name, String form, Progress progress);

    /**
     * Writes the whole book to a file, replacing it at once when the writing is complete.
     *
     * @return how many entries each section has
     * @throws etamine.storage.BookException if the file cannot be written
     */
    Map<String, Integer> dump(Path file, Progress progress);

    /**
     * How strict a load is.
     *
     * @param acceptGood whether to write the good entries and file the rejected beside the input
     * @param largest the size in bytes from which a file is refused unread
     */
    record LoadTerms(boolean acceptGood, long largest) {
        /** 64 MB. */
        public static final long USUAL_LARGEST = 64L * 1024 * 1024;

        /** All or nothing, files up to the usual size. */
        public static LoadTerms strict() {
            return new LoadTerms(false, USUAL_LARGEST);
        }

        /** The good entries only, files up to the usual size. */
        public static LoadTerms good() {
            return new LoadTerms(true, USUAL_LARGEST);
        }
    }
}
