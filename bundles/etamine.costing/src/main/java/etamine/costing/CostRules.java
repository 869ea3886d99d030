package etamine.costing;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How this kitchen reckons.
 *
 * @param prices ids of price sources in the order they are asked; sources not named come after them in their own order
 * @param labour whether and how work is costed
 * @param targetFoodCostPercent the food cost a plate should not exceed, in percent of its net price, where the recipe
 *     has no target of its own; empty when the kitchen has none
 * @param endings what menu prices may end in, each from 0 to less than 1, such as 0.50 and 0.95; empty when any will do
 */
public record CostRules(
        List<String> prices, Labour labour, Optional<BigDecimal> targetFoodCostPercent, List<BigDecimal> endings) {

    /** Copies the lists. */
    public CostRules {
        prices = List.copyOf(prices);
        endings = List.copyOf(endings);
    }

    /**
     * What hands-on time costs.
     *
     * @param on whether work is costed at all
     * @param perHour what an hour costs where its station has no rate of its own; empty when not said
     * @param stations what an hour costs at a station, by the station's name
     */
    public record Labour(boolean on, Optional<BigDecimal> perHour, Map<String, BigDecimal> stations) {

        /** Copies the map. */
        public Labour {
            stations = Collections.unmodifiableMap(new TreeMap<>(stations));
        }

        /** What an hour at a station costs; empty when nobody said. */
        public Optional<BigDecimal> rate(String station) {
            return Optional.ofNullable(stations.get(station)).or(() -> perHour);
        }
    }

    /** The rules of a kitchen that has set none: sources in their own order, no labour, no target, any ending. */
    public static CostRules unset() {
        return new CostRules(List.of(), new Labour(false, Optional.empty(), Map.of()), Optional.empty(), List.of());
    }

    /** The same rules with the sources asked in that order. */
    public CostRules withPrices(List<String> order) {
        return new CostRules(order, labour, targetFoodCostPercent, endings);
    }

    /** The same rules with work costed that way. */
    public CostRules withLabour(Labour other) {
        return new CostRules(prices, other, targetFoodCostPercent, endings);
    }

    /** The same rules with that target, or none. */
    public CostRules withTarget(Optional<BigDecimal> percent) {
        return new CostRules(prices, labour, percent, endings);
    }

    /** The same rules with menu prices ending so. */
    public CostRules withEndings(List<BigDecimal> others) {
        return new CostRules(prices, labour, targetFoodCostPercent, others);
    }
}
