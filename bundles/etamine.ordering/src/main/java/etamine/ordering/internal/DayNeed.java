package etamine.ordering.internal;

import etamine.kitchen.recipe.Requirement;
import etamine.kitchen.use.ExpectedUse.DayUse;
import etamine.measures.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What one day adds to what has to be bought. */
final class DayNeed {
    private final LocalDate day;
    private final String source;
    private final Map<String, Quantity> bought = new TreeMap<>();
    private final Map<String, Map<String, Quantity>> parts = new TreeMap<>();

    DayNeed(LocalDate day, String source) {
        this.day = day;
        this.source = source;
    }

    /** Adds what {@code after} asks for beyond {@code before}. */
    void add(Requirement after, Requirement before) {
        after.bought().forEach((item, quantity) -> {
            Quantity more = beyond(quantity, before.bought().get(item));
            if (more.signum() > 0) {
                bought.merge(item, more, Quantity::plus);
                parts(
                        item,
                        after.parts().getOrDefault(item, Map.of()),
                        before.parts().getOrDefault(item, Map.of()));
            }
        });
    }

    private void parts(String item, Map<String, Quantity> after, Map<String, Quantity> before) {
        after.forEach((recipe, quantity) -> {
            Quantity more = beyond(quantity, before.get(recipe));
            if (more.signum() > 0) {
                parts.computeIfAbsent(item, i -> new TreeMap<>()).merge(recipe, more, Quantity::plus);
            }
        });
    }

    private static Quantity beyond(Quantity quantity, @Nullable Quantity before) {
        return before == null ? quantity : quantity.minus(before);
    }

    /** The day's use by item. */
    List<DayUse> uses() {
        return bought.entrySet().stream()
                .map(entry -> new DayUse(
                        day, entry.getKey(), entry.getValue(), source, parts.getOrDefault(entry.getKey(), Map.of())))
                .toList();
    }
}
