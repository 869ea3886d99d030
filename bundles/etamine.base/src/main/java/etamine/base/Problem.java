package etamine.base;

/**
 * Something a person should look at.
 *
 * @param code stable, lower-case, hyphenated name of the kind of problem, such as {@code missing-equivalence}
 * @param severity how much it matters
 * @param where the place it concerns: a JSON pointer in a file, or {@code shelf/id} in a book
 * @param text one sentence saying what is wrong and what to do
 */
public record Problem(String code, Severity severity, String where, String text) {

    /** A problem that makes a figure or an action impossible. */
    public static Problem error(String code, String where, String text) {
        return new Problem(code, Severity.ERROR, where, text);
    }

    /** A problem that makes a figure doubtful. */
    public static Problem warning(String code, String where, String text) {
        return new Problem(code, Severity.WARNING, where, text);
    }

    /** A remark. */
    public static Problem note(String code, String where, String text) {
        return new Problem(code, Severity.NOTE, where, text);
    }
}
