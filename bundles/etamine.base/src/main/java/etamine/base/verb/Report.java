package etamine.base.verb;

import java.util.List;

/**
 * What a verb found out, once for machines and once for people.
 *
 * @param outcome how it ended
 * @param json the machine form: nested {@link java.util.Map}, {@link List}, {@link String}, {@link Number},
 *     {@link Boolean}, or an empty {@link java.util.Optional} for null; amounts are decimal strings and quantities
 *     strings with units. Maps keep their order
 * @param lines the same for a person, one line each, at most 120 columns where possible
 */
public record Report(Outcome outcome, Object json, List<String> lines) {

    /** Copies the lines. */
    public Report {
        lines = List.copyOf(lines);
    }

    /** A report of something done. */
    public static Report done(Object json, List<String> lines) {
        return new Report(Outcome.DONE, json, lines);
    }
}
