package etamine.kitchen.find;

import etamine.base.Subject;
import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/** Finds a module's things by what somebody types. Thread-safe; answers within 30 ms on large books. */
@ConsumerType
public interface Finder {

    /**
     * The best matches.
     *
     * @param text what was typed, trimmed, any case
     * @param atMost how many to give
     */
    List<Found> find(String text, int atMost);

    /**
     * One match.
     *
     * @param subject what to open
     * @param title its name
     * @param hint a few words that tell it apart, such as its kind or group
     */
    record Found(Subject subject, String title, String hint) {}
}
