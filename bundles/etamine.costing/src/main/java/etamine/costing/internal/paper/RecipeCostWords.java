package etamine.costing.internal.paper;

import etamine.kitchen.cost.RecipeCost;

/** Words for the ways a thing made comes to its cost. */
final class RecipeCostWords {
    private RecipeCostWords() {}

    static String how(RecipeCost.Made made) {
        if (made.credited()) {
            return "credited";
        }
        return made.byMarketValue() ? "share of what remains, by market value" : "share of what remains, by weight";
    }
}
