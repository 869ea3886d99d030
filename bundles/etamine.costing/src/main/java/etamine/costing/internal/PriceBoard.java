package etamine.costing.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import etamine.measures.Conversion;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Asks the price sources in the order of their ranks; the first that knows a usable price is taken. */
final class PriceBoard {
    private final List<PriceSource> ranked;

    PriceBoard(List<PriceSource> sources) {
        this.ranked = sources.stream()
                .sorted(Comparator.comparingInt(PriceSource::rank).thenComparing(PriceSource::id))
                .toList();
    }

    /** The price an item is reckoned with. */
    Optional<PriceQuote> quote(Item item) {
        return ranked.stream()
                .flatMap(source -> source.quote(item.id()).stream())
                .filter(quote -> usable(item, quote))
                .findFirst();
    }

    /** A price that is known but stands on a unit the item cannot be converted from, with what is missing. */
    Optional<String> unusable(Item item) {
        return ranked.stream()
                .flatMap(source -> source.quote(item.id()).stream())
                .filter(quote -> !usable(item, quote))
                .findFirst()
                .map(quote -> quote.text() + " is per " + quote.price().per() + ": "
                        + ((Conversion.Missing) Reckoning.convert(item, quote.price().per())).text());
    }

    /** What the quote comes to per reckoning unit of the item. */
    static double perUnit(Item item, PriceQuote quote) {
        Conversion per = Reckoning.convert(item, quote.price().per());
        return quote.price().amount().doubleValue() / Reckoning.units(per.orThrow());
    }

    private static boolean usable(Item item, PriceQuote quote) {
        return Reckoning.convert(item, quote.price().per()) instanceof Conversion.Converted;
    }
}
