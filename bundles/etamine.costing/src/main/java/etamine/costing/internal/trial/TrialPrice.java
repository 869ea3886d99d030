package etamine.costing.internal.trial;

import etamine.costing.PriceChange;
import etamine.costing.internal.state.CostState;
import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.measures.UnitPrice;
import java.util.Optional;

/** What a price becomes in an experiment. */
final class TrialPrice {
    private TrialPrice() {}

    /** The price itself, or the present one moved; empty when there is none to move. */
    static Optional<UnitPrice> of(CostState state, Item item, PriceChange change) {
        return change instanceof PriceChange.To to
                ? Optional.of(to.price())
                : state.quote(item).map(PriceQuote::price).map(change::of);
    }
}
