package etamine.ordering.internal;

import etamine.kitchen.covers.Diary;
import etamine.kitchen.covers.Sale;
import etamine.measures.Ratio;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Mean portions sold of each recipe by weekday, over the days of the last eight weeks on which anything was sold. */
final class SalesPattern {
    private static final int WEEKS = 8;

    private final Map<DayOfWeek, Map<String, Long>> sold = new EnumMap<>(DayOfWeek.class);
    private final Map<DayOfWeek, Set<LocalDate>> days = new EnumMap<>(DayOfWeek.class);

    SalesPattern(Diary diary, LocalDate before) {
        for (Sale sale : diary.sales(before.minusWeeks(WEEKS), before.minusDays(1))) {
            DayOfWeek day = sale.date().getDayOfWeek();
            sold.computeIfAbsent(day, d -> new TreeMap<>()).merge(sale.recipe(), sale.sold(), Math::addExact);
            days.computeIfAbsent(day, d -> new HashSet<>()).add(sale.date());
        }
    }

    /** The mean portions of that weekday; empty when nothing was ever sold on it. */
    Map<String, Ratio> on(DayOfWeek day) {
        Map<String, Ratio> means = new TreeMap<>();
        sold.getOrDefault(day, Map.of())
                .forEach((recipe, number) ->
                        means.put(recipe, Ratio.of(number, days.get(day).size())));
        return means;
    }
}
