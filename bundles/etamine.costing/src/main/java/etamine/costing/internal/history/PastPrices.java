package etamine.costing.internal.history;

import etamine.costing.internal.engine.Reckoning;
import etamine.costing.internal.state.PriceBoard;
import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import etamine.measures.Conversion;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The prices items were reckoned with on earlier days, by the order in which sources are asked now. Histories are read
 * once. Not thread-safe.
 */
final class PastPrices {
    private final List<PriceSource> ranked;
    private final LocalDate today;
    private final Map<String, List<List<PriceQuote>>> histories = new HashMap<>();

    PastPrices(List<PriceSource> ranked, LocalDate today) {
        this.ranked = ranked;
        this.today = today;
    }

    /** The price at the end of a day; empty when nobody knew one. A source without a memory counts with its price now. */
    Optional<PriceQuote> at(Item item, LocalDate day) {
        List<List<PriceQuote>> histories = histories(item.id());
        for (int i = 0; i < ranked.size(); i++) {
            Optional<PriceQuote> quote =
                    histories.get(i).isEmpty() ? ranked.get(i).quote(item.id(), day) : floor(histories.get(i), day);
            if (quote.filter(found -> usable(item, found)).isPresent()) {
                return quote;
            }
        }
        return Optional.empty();
    }

    /** The price at the end of a day, else the first one after it, else the one now. */
    Optional<PriceQuote> atOrFirst(Item item, LocalDate day) {
        return at(item, day)
                .or(() -> course(item).stream().findFirst())
                .or(() -> ranked.stream()
                        .flatMap(source -> source.quote(item.id()).stream())
                        .filter(quote -> usable(item, quote))
                        .findFirst());
    }

    /** Every price the item was reckoned with up to today, each with the day it came into force, oldest first. */
    List<PriceQuote> course(Item item) {
        TreeSet<LocalDate> days = new TreeSet<>();
        histories(item.id())
                .forEach(history -> history.forEach(quote -> quote.asOf().ifPresent(days::add)));
        List<PriceQuote> course = new ArrayList<>();
        for (LocalDate day : days.headSet(today, true)) {
            at(item, day)
                    .filter(quote -> course.isEmpty() || differs(item, course.get(course.size() - 1), quote))
                    .ifPresent(quote -> course.add(quote.from(day)));
        }
        return course;
    }

    private static boolean differs(Item item, PriceQuote before, PriceQuote after) {
        return !before.price().equals(after.price())
                && PriceBoard.perUnit(item, before) != PriceBoard.perUnit(item, after);
    }

    private List<List<PriceQuote>> histories(String item) {
        return histories.computeIfAbsent(
                item, id -> ranked.stream().map(source -> source.history(id)).toList());
    }

    private static Optional<PriceQuote> floor(List<PriceQuote> history, LocalDate day) {
        return history.stream()
                .filter(quote -> !quote.asOf().orElse(LocalDate.MIN).isAfter(day))
                .reduce((earlier, later) -> later);
    }

    private static boolean usable(Item item, PriceQuote quote) {
        return Reckoning.convert(item, quote.price().per()) instanceof Conversion.Converted;
    }
}
