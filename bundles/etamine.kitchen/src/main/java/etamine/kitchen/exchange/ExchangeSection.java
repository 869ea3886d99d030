package etamine.kitchen.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * One section of the exchange form. Reading never throws on bad content: every entry carries its own problems, so that
 * one bad entry does not hide the others.
 */
@ConsumerType
public interface ExchangeSection {

    /** The member of the file, such as {@code ingredients}. */
    String name();

    /** The module it belongs to, such as {@code etamine.ingredients}. */
    String module();

    /** The JSON Schema (2020-12) of the section's value, as JSON text. */
    String schema();

    /** Sections that must be written before this one when a file has both. */
    default Set<String> after() {
        return Set.of();
    }

    /**
     * The kinds of {@link Facts} this section declares, even when it has none just now; a reference to a kind that no
     * installed section declares cannot be checked.
     */
    default Set<Class<?>> declares() {
        return Set.of();
    }

    /** Puts what the book already holds into {@code facts}, so that a file may refer to it. */
    void recall(Facts facts);

    /**
     * Reads the section. An array gives one entry per element, an object a single entry.
     *
     * @param section the section's value; entries that failed the schema are already taken out and stand as null nodes,
     *     so that pointers stay right: skip them
     * @param facts where what the entries declare goes
     */
    List<ExchangeEntry> read(JsonNode section, Facts facts);

    /** The section as it stands in the book; a missing node when there is nothing. */
    JsonNode dump();

    /**
     * Whether it is a list that may be too large to be held at once. Such a section is handed on entry by entry where
     * that is possible.
     */
    default boolean large() {
        return false;
    }

    /** Hands over the entries of {@link #dump} one by one; a large section holds one at a time. */
    default void dumpEach(Consumer<JsonNode> entries) {
        dump().forEach(entries);
    }
}
