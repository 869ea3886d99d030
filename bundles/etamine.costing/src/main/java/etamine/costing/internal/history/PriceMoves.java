package etamine.costing.internal.history;

import etamine.costing.Moved.PriceMove;
import etamine.costing.internal.engine.Reckoning;
import etamine.costing.internal.state.PriceBoard;
import etamine.kitchen.item.Item;
import etamine.kitchen.price.PriceQuote;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Every price that changed since a day. */
final class PriceMoves {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private PriceMoves() {}

    /** The moves from that day on, oldest first; the first price an item ever had is none. */
    static List<PriceMove> since(LocalDate day, Collection<Item> items, PastPrices past) {
        List<PriceMove> moves = new ArrayList<>();
        for (Item item : items) {
            List<PriceQuote> course = past.course(item);
            for (int i = 1; i < course.size(); i++) {
                PriceQuote now = course.get(i);
                LocalDate on = now.asOf().orElseThrow();
                if (!on.isBefore(day)) {
                    moves.add(move(item, on, course.get(i - 1), now));
                }
            }
        }
        moves.sort(Comparator.comparing(PriceMove::on).thenComparing(PriceMove::item));
        return moves;
    }

    private static PriceMove move(Item item, LocalDate on, PriceQuote before, PriceQuote after) {
        UnitPrice from = Reckoning.price(item, PriceBoard.perUnit(item, before));
        UnitPrice to = Reckoning.price(item, PriceBoard.perUnit(item, after));
        return new PriceMove(item.id(), on, from, to, percent(from, to), after.text());
    }

    /** By how much a price moved, in percent with two decimals; empty from nothing. */
    static Optional<BigDecimal> percent(UnitPrice from, UnitPrice to) {
        return from.amount().signum() == 0
                ? Optional.empty()
                : Optional.of(to.amount()
                        .subtract(from.amount())
                        .multiply(HUNDRED)
                        .divide(from.amount(), 2, RoundingMode.HALF_UP));
    }
}
