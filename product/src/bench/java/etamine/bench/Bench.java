package etamine.bench;

import java.util.List;

/** Something that can be measured. A new one is added to the list in {@link Benches}. */
public interface Bench {

    /** What it is called on the command line. */
    String name();

    /** Measures and returns the lines to print: figures with their units, and ratios to a floor of the same run. */
    List<String> measure() throws Exception;
}
