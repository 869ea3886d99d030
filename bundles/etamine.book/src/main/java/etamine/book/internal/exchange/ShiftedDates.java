package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.Map;
import java.util.regex.Pattern;

/** Moves every date and moment of a form by whole weeks, so that weekdays and times of day stay what they are. */
final class ShiftedDates {
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern MOMENT = Pattern.compile("\\d{4}-\\d{2}-\\d{2}T.*Z");

    private final long weeks;
    private final ZoneId zone;

    /** Moves {@code from} into the week (Monday to Sunday) of {@code to}; times of day are kept in {@code zone}. */
    ShiftedDates(LocalDate from, LocalDate to, ZoneId zone) {
        this.weeks = ChronoUnit.WEEKS.between(monday(from), monday(to));
        this.zone = zone;
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    /** Changes the tree itself. */
    void shift(JsonNode tree) {
        if (tree instanceof ObjectNode object) {
            for (Map.Entry<String, JsonNode> member : object.properties()) {
                member.setValue(shifted(member.getValue()));
            }
        } else if (tree instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                array.set(i, shifted(array.get(i)));
            }
        }
    }

    private JsonNode shifted(JsonNode value) {
        if (value.isTextual()) {
            return TextNode.valueOf(shifted(value.asText()));
        }
        shift(value);
        return value;
    }

    private String shifted(String text) {
        try {
            if (DATE.matcher(text).matches()) {
                return LocalDate.parse(text).plusWeeks(weeks).toString();
            }
            if (MOMENT.matcher(text).matches()) {
                return Instant.parse(text)
                        .atZone(zone)
                        .plusWeeks(weeks)
                        .toInstant()
                        .toString();
            }
        } catch (DateTimeException notADate) {
            return text;
        }
        return text;
    }
}
