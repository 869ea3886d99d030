package etamine.costing.internal.state;

import etamine.costing.internal.engine.Reckoning;
import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import etamine.measures.Conversion;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Asks the price sources in the order they are given; the first that knows a usable price is taken. */
public final class PriceBoard {
    private final List<PriceSource> ranked;

    public PriceBoard(List<PriceSource> ranked) {
        this.ranked = List.copyOf(ranked);
    }

    /** Sources in the order the kitchen wants; those it did not name come after, by their ranks. */
    public static List<PriceSource> ranked(List<PriceSource> sources, List<String> order) {
        return sources.stream()
                .sorted(Comparator.comparingInt((PriceSource source) -> place(source, order))
                        .thenComparingInt(PriceSource::rank)
                        .thenComparing(PriceSource::id))
                .toList();
    }

    private static int place(PriceSource source, List<String> order) {
        int place = order.indexOf(source.id());
        return place < 0 ? order.size() : place;
    }

    /**
     * A price and what it comes to.
     *
     * @param item whose price it is
     * @param quote as the source gave it
     * @param perUnit per reckoning unit of the item
     */
    record Priced(Item item, PriceQuote quote, double perUnit) {
        private boolean isStill(Item now, PriceQuote quoted) {
            return item == now && quote.price().equals(quoted.price());
        }
    }

    /** The price an item is reckoned with. */
    Optional<PriceQuote> quote(Item item) {
        return priced(item, null).map(Priced::quote);
    }

    /** The same, converted only if it is not {@code last} again: after most changes nearly all prices are. */
    Optional<Priced> priced(Item item, @Nullable Priced last) {
        for (PriceSource source : ranked) {
            PriceQuote quote = source.quote(item.id()).orElse(null);
            if (quote != null && last != null && last.isStill(item, quote)) {
                return Optional.of(new Priced(item, quote, last.perUnit));
            }
            if (quote != null && usable(item, quote)) {
                return Optional.of(new Priced(item, quote, perUnit(item, quote)));
            }
        }
        return Optional.empty();
    }

    /** A price that is known but stands on a unit the item cannot be converted from, with what is missing. */
    public Optional<String> unusable(Item item) {
        return ranked.stream()
                .flatMap(source -> source.quote(item.id()).stream())
                .filter(quote -> !usable(item, quote))
                .findFirst()
                .map(quote -> quote.text() + " is per " + quote.price().per() + ": "
                        + ((Conversion.Missing)
                                        Reckoning.convert(item, quote.price().per()))
                                .text());
    }

    /** What the quote comes to per reckoning unit of the item. */
    public static double perUnit(Item item, PriceQuote quote) {
        Conversion per = Reckoning.convert(item, quote.price().per());
        return quote.price().amount().doubleValue() / Reckoning.units(per.orThrow());
    }

    private static boolean usable(Item item, PriceQuote quote) {
        return Reckoning.convert(item, quote.price().per()) instanceof Conversion.Converted;
    }
}
