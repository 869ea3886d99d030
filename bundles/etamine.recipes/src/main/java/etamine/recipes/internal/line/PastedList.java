package etamine.recipes.internal.line;

import etamine.recipes.UseLines.Pasted;
import etamine.recipes.UseLines.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** A pasted list taken apart into lines; every character is looked at a fixed number of times. */
final class PastedList {
    /** Bullets, check boxes and numbering in front of a line. A number counts only with a mark and a blank behind it. */
    private static final Pattern MARKS = Pattern.compile(
            "^(?:[\\u2022\\u2023\\u25aa\\u25cf\\u25e6\\u2043\\u2013\\u2014*+\\u00b7-]\\s+|[\\u2610\\u2611\\u2612]\\s*|[0-9]{1,3}[.)]\\s+(?=\\S))+");

    private static final int LONGEST_HEADING = 80;

    private PastedList() {}

    static List<Pasted> of(String text, Function<String, Reading> reader) {
        List<Pasted> lines = new ArrayList<>();
        int number = 0;
        int at = 0;
        while (at <= text.length()) {
            int end = lineEnd(text, at);
            number++;
            String line = bare(text.substring(at, end));
            if (!line.isEmpty()) {
                Optional<Reading> reading = isHeading(line) ? Optional.empty() : Optional.of(reader.apply(line));
                lines.add(new Pasted(number, line, reading));
            }
            boolean both = end + 1 < text.length() && text.charAt(end) == '\r' && text.charAt(end + 1) == '\n';
            at = end + (both ? 2 : 1);
        }
        return List.copyOf(lines);
    }

    private static int lineEnd(String text, int from) {
        int end = from;
        while (end < text.length() && "\n\r\u0085\u2028\u2029".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        return end;
    }

    private static String bare(String line) {
        String plain = line.replace('\u00a0', ' ')
                .replace('\t', ' ')
                .replace("\ufeff", "")
                .strip();
        return MARKS.matcher(plain).replaceFirst("").strip();
    }

    /** A heading says something about the lines below: it ends with a colon, or stands in marks, and has no amount. */
    private static boolean isHeading(String line) {
        if (line.length() > LONGEST_HEADING || line.chars().anyMatch(Character::isDigit)) {
            return false;
        }
        return line.endsWith(":") || line.startsWith("#") || line.startsWith("==") || line.matches("[-=_*~\\s]+");
    }
}
