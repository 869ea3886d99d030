package etamine.kitchen.exchange;

import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import java.util.List;
import java.util.stream.Collectors;

/** An entry that cannot be understood, with everything that is wrong and where. */
public class EntryTroubles extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient List<Trouble> troubles;

    /** An entry with these troubles, at least one. */
    public EntryTroubles(List<Trouble> troubles) {
        super(troubles.stream().map(Trouble::problem).collect(Collectors.joining(" ")));
        this.troubles = List.copyOf(troubles);
    }

    /** Nothing when the reader had no trouble, else the exception with what it had. */
    public static void throwIfAny(EntryReader reader) {
        if (!reader.troubles().isEmpty()) {
            throw new EntryTroubles(reader.troubles());
        }
    }

    /** Everything that is wrong. */
    public List<Trouble> troubles() {
        return troubles;
    }
}
