package etamine.kitchen.exchange;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What became of a load.
 *
 * @param written whether the accepted entries are in the book
 * @param accepted how many entries were good, by section in the order they were written
 * @param kept how many entries were put by untouched because no installed module owns their section
 * @param rejected everything that is wrong, in the order of the files
 * @param doubts what was written but may not be meant, in the order of the files; empty when nothing was written
 * @param filed the files of rejected entries that were written beside the input
 */
public record LoadResult(
        boolean written,
        Map<String, Integer> accepted,
        Map<String, Integer> kept,
        List<Rejected> rejected,
        List<Rejected> doubts,
        List<Path> filed) {

    /**
     * One thing wrong.
     *
     * @param file the file it stands in
     * @param pointer where in the file, as a JSON pointer; empty for the whole file
     * @param problem a sentence that says what to do
     */
    public record Rejected(Path file, String pointer, String problem) {}

    /** Copies the collections, keeping their order. */
    public LoadResult {
        accepted = Collections.unmodifiableMap(new LinkedHashMap<>(accepted));
        kept = Collections.unmodifiableMap(new LinkedHashMap<>(kept));
        rejected = List.copyOf(rejected);
        doubts = List.copyOf(doubts);
        filed = List.copyOf(filed);
    }
}
