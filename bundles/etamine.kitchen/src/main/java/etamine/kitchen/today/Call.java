package etamine.kitchen.today;

import etamine.base.Subject;
import java.time.Instant;
import java.util.Optional;

/**
 * Something that needs somebody now.
 *
 * @param id stable while the reason stands, such as {@code cut-off/dairy/2026-11-27}
 * @param urgency how soon
 * @param text one line that says what and how much
 * @param due by when, if there is such a moment
 * @param subject what to open to deal with it
 */
public record Call(String id, Urgency urgency, String text, Optional<Instant> due, Subject subject) {

    /** How soon a call wants an answer. */
    public enum Urgency {
        /** Before anything else. */
        NOW,
        /** In the course of the day. */
        TODAY,
        /** When there is time. */
        SOON
    }
}
