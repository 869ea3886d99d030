package etamine.ordering.internal.plan;

import etamine.measures.MeasureStyle;
import etamine.measures.QuantityText;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Days and amounts as a plan's sentences say them.
 *
 * @param start day 0
 * @param style the family of units the house reads
 */
public record PlanWords(LocalDate start, MeasureStyle style) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    /** A date, such as {@code Fri 27 Nov}. */
    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** A day of the plan. */
    public String day(int day) {
        return day(start.plusDays(day));
    }

    /** An amount of an item. */
    public String amount(ItemModel item, long grains) {
        return QuantityText.format(item.grain().quantity(grains), style);
    }

    /** A number of packs. */
    public static String packs(long packs) {
        return packs == 1 ? "1 pack" : packs + " packs";
    }
}
