package etamine.checks.demo;

import etamine.measures.Ratio;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Who came and what they chose, day by day: the week's shape, better and worse weeks, and chance from a fixed seed. */
final class ServiceDays {
    /** Weeks of service before today. */
    static final int WEEKS_BACK = 8;
    /** Days of bookings from today on. */
    static final int DAYS_AHEAD = 14;

    private static final long SEED = 44_009L;
    private static final Map<DayOfWeek, Integer> USUAL = Map.of(
            DayOfWeek.TUESDAY, 22,
            DayOfWeek.WEDNESDAY, 26,
            DayOfWeek.THURSDAY, 32,
            DayOfWeek.FRIDAY, 44,
            DayOfWeek.SATURDAY, 50,
            DayOfWeek.SUNDAY, 56);

    private final TreeMap<LocalDate, Integer> covers = new TreeMap<>();
    private final TreeMap<LocalDate, Map<String, Integer>> sales = new TreeMap<>();

    ServiceDays(WrittenKitchen kitchen) {
        Random chance = new Random(SEED);
        LocalDate today = kitchen.today();
        LocalDate first = today.minusWeeks(WEEKS_BACK);
        int week = 100;
        for (LocalDate day = first; day.isBefore(today.plusDays(DAYS_AHEAD)); day = day.plusDays(1)) {
            if (day.getDayOfWeek() == DayOfWeek.MONDAY) {
                week = 94 + chance.nextInt(14);
            }
            if (USUAL.containsKey(day.getDayOfWeek())) {
                covers.put(day, USUAL.get(day.getDayOfWeek()) * week / 100 + chance.nextInt(7) - 3);
                sales.put(day, sold(kitchen.mix(), covers.get(day), chance));
            }
        }
    }

    /** Covers of every open day, past and booked. */
    Map<LocalDate, Integer> covers() {
        return covers;
    }

    /** What was sold before today, in the order of the menu. */
    Map<LocalDate, Map<String, Integer>> sales(LocalDate today) {
        return sales.headMap(today);
    }

    /** What is sold, or for a day to come what will be; the kitchen buys as if it had guessed it. */
    Map<String, Integer> guessed(LocalDate day) {
        return sales.getOrDefault(day, Map.of());
    }

    private static Map<String, Integer> sold(List<Map.Entry<String, Ratio>> mix, int covers, Random chance) {
        Map<String, Integer> sold = new LinkedHashMap<>();
        for (Map.Entry<String, Ratio> choice : mix) {
            Ratio swing = Ratio.of(85 + chance.nextInt(31), 100);
            long portions = choice.getValue()
                    .times(Ratio.of(covers))
                    .times(swing)
                    .toDecimal(0, RoundingMode.HALF_UP)
                    .longValueExact();
            sold.put(choice.getKey(), Math.toIntExact(portions));
        }
        return sold;
    }
}
