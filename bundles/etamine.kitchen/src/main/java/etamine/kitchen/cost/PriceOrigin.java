package etamine.kitchen.cost;

import etamine.kitchen.price.PriceQuote;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * Where a price comes from and how old it is.
 *
 * @param source the id of the price source, such as {@code offer}
 * @param text where exactly, such as {@code offer D-104 of Hill Dairy}
 * @param since the day it holds from; empty when nobody knows
 * @param daysOld how many days that is ago; empty when nobody knows, never negative
 */
public record PriceOrigin(String source, String text, Optional<LocalDate> since, Optional<Long> daysOld) {

    /** The origin of a quote as seen on a day. */
    public static PriceOrigin of(PriceQuote quote, LocalDate today) {
        Optional<Long> age = quote.asOf().map(since -> Math.max(0, ChronoUnit.DAYS.between(since, today)));
        return new PriceOrigin(quote.source(), quote.text(), quote.asOf(), age);
    }

    /** All of it in words, such as {@code offer D-104 of Hill Dairy, since 2026-11-16, 9 days old}. */
    public String inWords() {
        String from = since.map(LocalDate::toString)
                .filter(day -> !text.contains(day))
                .map(day -> ", since " + day)
                .orElse("");
        return text + from + daysOld.map(PriceOrigin::age).orElse("");
    }

    private static String age(long days) {
        return days == 0 ? ", of today" : ", " + days + (days == 1 ? " day old" : " days old");
    }
}
