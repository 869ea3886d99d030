package etamine.base;

import java.util.List;
import java.util.Optional;

/**
 * What a number was made from, as a small tree that the slate and the console can open.
 *
 * @param title what the figure is, such as {@code Celeriac, peeled, 312 g EP}
 * @param value the figure as text with its unit; empty for a heading
 * @param source where it comes from, such as {@code written price of 2026-11-01}; empty when the parts say it
 * @param parts the figures it was made from, in the order they enter
 * @param subject what to open for more; empty when there is nothing to open
 */
public record Explanation(
        String title, String value, String source, List<Explanation> parts, Optional<Subject> subject) {

    /** Copies the parts. */
    public Explanation {
        parts = List.copyOf(parts);
    }

    /** A leaf: one figure and where it comes from. */
    public static Explanation leaf(String title, String value, String source) {
        return new Explanation(title, value, source, List.of(), Optional.empty());
    }

    /** A figure and the figures it was made from. */
    public static Explanation of(String title, String value, List<Explanation> parts) {
        return new Explanation(title, value, "", parts, Optional.empty());
    }

    /** The same explanation, opening {@code subject} when it is followed. */
    public Explanation about(Subject subject) {
        return new Explanation(title, value, source, parts, Optional.of(subject));
    }
}
