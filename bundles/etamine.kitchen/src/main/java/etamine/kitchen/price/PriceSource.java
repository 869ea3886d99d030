package etamine.kitchen.price;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ConsumerType;

/** Knows prices of some items. Lower ranks are asked first. Thread-safe and cheap to ask. */
@ConsumerType
public interface PriceSource {

    /** Stable name: {@code offer}, {@code last-paid}, {@code average}, {@code written}. */
    String id();

    /** The name for people. */
    String label();

    /** Its place among the sources: current offer 10, last paid 20, running average 30, written price 40. */
    int rank();

    /** The price it would give now; empty when it knows none. */
    Optional<PriceQuote> quote(String item);

    /** The price it would have given on that day, as far as the book knows; a source without a memory gives its price now. */
    default Optional<PriceQuote> quote(String item, LocalDate on) {
        return quote(item);
    }

    /**
     * Every price it ever gave for an item, each with the day it began to hold, oldest first; prices to come are left
     * out. A source without a memory gives none. Reads the book, so call it in the background.
     */
    default List<PriceQuote> history(String item) {
        return List.of();
    }
}
