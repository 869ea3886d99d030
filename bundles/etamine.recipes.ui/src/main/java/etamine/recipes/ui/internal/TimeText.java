package etamine.recipes.ui.internal;

import etamine.measures.MeasureException;
import java.time.Duration;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times as cooks write them: {@code 25}, {@code 1 h 30}, {@code 2 d}. */
final class TimeText {
    private static final Pattern PARTS = Pattern.compile(
            "(?:(\\d{1,3})\\s*(?:d|days?))?\\s*(?:(\\d{1,4})\\s*(?:h|hours?))?\\s*(?:(\\d{1,5})\\s*(?:m|min|minutes?)?)?");

    private TimeText() {}

    static String of(Duration time) {
        if (time.isZero()) {
            return "";
        }
        long minutes = time.toMinutes();
        if (minutes % 1440 == 0) {
            return minutes / 1440 + " d";
        }
        return minutes >= 120 && minutes % 60 == 0 ? minutes / 60 + " h" : Long.toString(minutes);
    }

    static Duration read(String text) {
        Matcher parts = PARTS.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!parts.matches()) {
            throw new MeasureException("Write minutes, such as 25, or 1 h 30, or 2 d.");
        }
        return Duration.ofDays(number(parts.group(1)))
                .plusHours(number(parts.group(2)))
                .plusMinutes(number(parts.group(3)));
    }

    /** What was written before, when the new text says no other minutes than it did. */
    static Duration keeping(Duration old, String text) {
        Duration typed = read(text);
        return of(old).equals(of(typed)) ? old : typed;
    }

    private static long number(String digits) {
        return digits == null ? 0 : Long.parseLong(digits);
    }
}
