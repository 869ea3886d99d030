package etamine.shell.app.internal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The window's small pieces of language. */
final class Sentences {
    static final DateTimeFormatter LONG_DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_AND_TIME = DateTimeFormatter.ofPattern("EEE d, HH:mm", Locale.ENGLISH);

    private static final Pattern FIGURE = Pattern.compile("(?<=\\d) (?=(?:%|\\p{Lu}{3}|[a-z]{1,2})(?:\\W|$))");

    private Sentences() {}

    /** The same words with every figure kept on one line with its unit or currency. */
    static String kept(String words) {
        return FIGURE.matcher(words).replaceAll("\u00a0");
    }

    /** What a failure says, or what it is when it says nothing. */
    static String of(@Nullable Throwable failure) {
        if (failure == null) {
            return "no reason was given";
        }
        String message = failure.getMessage();
        return message == null || message.isBlank() ? failure.getClass().getSimpleName() : message;
    }

    /** When something is due, as seen now: {@code in 2 h 10 min}, {@code 12 min ago}, {@code Fri 27, 22:00}. */
    static String due(Instant due, Clock clock) {
        Instant now = clock.instant();
        long minutes = Math.abs(Duration.between(now, due).toMinutes());
        if (minutes >= 24 * 60 && due.isBefore(now)) {
            long days = minutes / (24 * 60);
            return days == 1 ? "a day ago" : days + " days ago";
        }
        if (minutes >= 24 * 60) {
            return DAY_AND_TIME.format(ZonedDateTime.ofInstant(due, clock.getZone()));
        }
        String span = minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
        if (minutes == 0) {
            return "now";
        }
        return due.isAfter(now) ? "in " + span : span + " ago";
    }
}
