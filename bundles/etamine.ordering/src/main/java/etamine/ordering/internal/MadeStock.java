package etamine.ordering.internal;

import etamine.kitchen.stock.Lot;
import etamine.kitchen.stock.StockLevel;
import etamine.measures.Quantity;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Made components on the shelf, which need not be made again. */
final class MadeStock {
    private MadeStock() {}

    /** How much of each made item there is that may still be used on that day. */
    static Map<String, Quantity> usableOn(LocalDate day, Neighbours neighbours) {
        Map<String, Quantity> usable = new TreeMap<>();
        neighbours
                .stock()
                .ifPresent(stock -> stock.levels().forEach((item, level) -> {
                    if (neighbours.isMade(item)) {
                        usable(level, day).ifPresent(quantity -> usable.put(item, quantity));
                    }
                }));
        return usable;
    }

    private static Optional<Quantity> usable(StockLevel level, LocalDate day) {
        return level.lots().stream()
                .filter(lot -> lot.useBy().map(last -> !last.isBefore(day)).orElse(true))
                .map(Lot::quantity)
                .filter(quantity -> quantity.signum() > 0)
                .reduce(Quantity::plus);
    }
}
