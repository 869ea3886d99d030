package etamine.inventory.internal;

import etamine.kitchen.cost.Costs;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import java.util.List;
import java.util.Optional;

/**
 * Values lots of one item at what they cost; where that is not known, at the first price a source has, and things that
 * are made at what making them costs.
 *
 * @param measure how the item is measured
 * @param sources price sources, lowest rank first
 * @param costs what made things cost, asked last; empty when nobody reckons it
 */
record Valuer(ItemMeasure measure, List<PriceSource> sources, Optional<Costs> costs) {

    /**
     * What some stock is worth.
     *
     * @param amount in the house's currency, exact
     * @param source where the price comes from, in words
     */
    record Worth(Ratio amount, String source) {}

    /** What a quantity is worth; empty when neither cost nor price is known. */
    Optional<Worth> worth(Quantity quantity, Optional<UnitPrice> cost) {
        return cost.flatMap(price -> at(quantity, price))
                .map(amount -> new Worth(amount, "what the lots cost"))
                .or(() -> quoted(quantity))
                .or(() -> made(quantity));
    }

    private Optional<Worth> made(Quantity quantity) {
        return costs.flatMap(known -> known.item(measure.id()))
                .flatMap(cost -> at(quantity, cost.price())
                        .map(amount ->
                                new Worth(amount, cost.complete() ? cost.source() : "at least " + cost.source())));
    }

    private Optional<Worth> quoted(Quantity quantity) {
        for (PriceSource source : sources) {
            Optional<PriceQuote> quote = source.quote(measure.id());
            Optional<Ratio> amount = quote.flatMap(known -> at(quantity, known.price()));
            if (amount.isPresent()) {
                return Optional.of(new Worth(amount.get(), quote.orElseThrow().text()));
            }
        }
        return Optional.empty();
    }

    private Optional<Ratio> at(Quantity quantity, UnitPrice price) {
        return measure.like(quantity, price.per().unit()).map(price::cost);
    }
}
