package etamine.kitchen.exchange;

import etamine.storage.Transaction;
import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/** One entry of a section, read but not yet written. */
@ConsumerType
public interface ExchangeEntry {

    /** Its place within the section as a JSON pointer, such as {@code /3}; empty for the whole section. */
    String pointer();

    /** Its identifier, unique within the section of one file; empty when it has none. */
    String id();

    /** What is wrong with it as far as it can be seen alone. */
    List<Trouble> troubles();

    /** What is wrong with it beside the others, once all sections have been read. */
    List<Trouble> check(Facts facts);

    /** What may not be meant, although it is written; asked only of entries that are. */
    default List<Trouble> doubts(Facts facts) {
        return List.of();
    }

    /** Writes it; called only when it had no troubles. */
    void write(Transaction transaction);

    /**
     * One thing wrong.
     *
     * @param pointer within the entry, such as {@code /uses/2/quantity}; empty for the whole entry
     * @param problem a sentence that says what to do
     */
    record Trouble(String pointer, String problem) {}
}
