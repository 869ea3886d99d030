package etamine.inventory.internal;

import etamine.inventory.internal.Valuer.Worth;
import etamine.kitchen.stock.Lot;
import etamine.kitchen.stock.StockLevel;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One item's stock and where its value comes from.
 *
 * @param level what is there
 * @param valuedBy where the value comes from, in words
 * @param apart what is there but cannot be brought to the item's count unit, so it is not in the level
 */
record ItemStock(StockLevel level, String valuedBy, List<Lot> apart) {

    static ItemStock of(Map<LotKey, Long> lots, Valuer valuer, Currency currency) {
        ItemMeasure measure = valuer.measure();
        List<Lot> counted = new ArrayList<>();
        List<Lot> apart = new ArrayList<>();
        Quantity onHand = null;
        Ratio total = Ratio.ZERO;
        boolean unknown = false;
        Set<String> sources = new LinkedHashSet<>();
        for (Map.Entry<LotKey, Long> entry : lots.entrySet()) {
            Lot lot = lot(measure, entry.getKey(), entry.getValue());
            onHand = onHand == null ? Quantity.zero(measure.countIn(lot.quantity())) : onHand;
            if (!lot.quantity().unit().isLike(onHand.unit())) {
                apart.add(lot);
                continue;
            }
            counted.add(lot);
            onHand = onHand.plus(lot.quantity());
            Optional<Worth> worth = valuer.worth(lot.quantity(), lot.unitCost());
            total = total.plus(worth.map(Worth::amount).orElse(Ratio.ZERO));
            worth.ifPresent(known -> sources.add(known.source()));
            unknown |= worth.isEmpty();
        }
        Quantity sum = onHand == null ? nothing(measure) : onHand;
        boolean valued = !sources.isEmpty() || counted.isEmpty();
        Optional<Money> value = valued ? Optional.of(Money.of(total, currency)) : Optional.empty();
        return new ItemStock(new StockLevel(measure.id(), sum, counted, value), words(sources, unknown), apart);
    }

    private static Quantity nothing(ItemMeasure measure) {
        return Quantity.zero(measure.countIn(Quantity.zero(Unit.EA)));
    }

    private static String words(Set<String> sources, boolean unknown) {
        if (sources.isEmpty()) {
            return unknown ? "no cost and no price known" : "";
        }
        return String.join(" and ", sources) + (unknown ? "; a part has no price" : "");
    }

    private static Lot lot(ItemMeasure measure, LotKey key, long amount) {
        return new Lot(
                measure.id(),
                key.place(),
                key.lot(),
                measure.shown(key.dimension(), amount),
                key.lastDay(),
                key.unitCost());
    }
}
