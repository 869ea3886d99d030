package etamine.inventory.internal;

import etamine.inventory.CountLine;
import etamine.inventory.RefusedException.Reason;
import etamine.inventory.internal.Netting.Taken;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.Dimension;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Sets the level of an item in a place to what was counted. A line with a use-by day or a mark sets those lots; a line
 * without sets all the others; lots that no line speaks of are no longer there. What is missing leaves the lots that
 * expire first; what is more than the ledger knew first makes good what is below zero, then comes as a lot of its own
 * whose cost nobody knows.
 */
final class Counting {
    private final Movers movers;
    private final String since;
    private final List<Draft> drafts = new ArrayList<>();

    Counting(Movers movers, Instant at) {
        this.movers = movers;
        this.since = LotKey.text(at);
    }

    private record Spot(String item, String place) {}

    private record Counted(String useBy, String lot, ItemMeasure.Amount amount) {
        boolean named() {
            return !useBy.isEmpty() || !lot.isEmpty();
        }

        boolean means(LotKey key) {
            return (useBy.isEmpty() || useBy.equals(key.useBy())) && (lot.isEmpty() || lot.equals(key.lot()));
        }
    }

    List<Draft> drafts(List<CountLine> lines) {
        Map<Spot, List<Counted>> spots = new LinkedHashMap<>();
        for (CountLine line : lines) {
            Counted counted = new Counted(
                    line.useBy().map(Object::toString).orElse(""),
                    line.lot(),
                    movers.amount(line.item(), line.quantity()));
            Spot spot = new Spot(line.item(), movers.place(line.item(), line.place()));
            List<Counted> known = spots.computeIfAbsent(spot, key -> new ArrayList<>());
            Movers.refuseIf(
                    known.stream()
                            .anyMatch(other -> other.useBy().equals(counted.useBy())
                                    && other.lot().equals(counted.lot())),
                    Reason.INPUT,
                    "“" + line.item() + "” is counted twice in “" + spot.place() + "”; write one line for it.");
            known.add(counted);
        }
        spots.forEach(this::settle);
        return drafts;
    }

    private void settle(Spot spot, List<Counted> counted) {
        Dimension dimension = counted.get(0).amount().dimension();
        TreeMap<LotKey, Long> open = movers.in(spot.item(), spot.place(), dimension);
        counted.stream().filter(Counted::named).forEach(line -> {
            TreeMap<LotKey, Long> meant = new TreeMap<>(open);
            meant.keySet().removeIf(key -> !line.means(key));
            open.keySet().removeAll(meant.keySet());
            set(spot, meant, line.amount(), new LotKey(spot.place(), line.lot(), line.useBy(), "", since, dimension));
        });
        long others = counted.stream()
                .filter(line -> !line.named())
                .mapToLong(line -> line.amount().base())
                .sum();
        set(
                spot,
                open,
                new ItemMeasure.Amount(dimension, others),
                new LotKey(spot.place(), "", "", "", since, dimension));
    }

    private void set(Spot spot, TreeMap<LotKey, Long> lots, ItemMeasure.Amount target, LotKey fresh) {
        long difference = target.base()
                - lots.values().stream().mapToLong(Long::longValue).sum();
        if (difference < 0) {
            take(spot, lots, -difference);
        } else {
            add(spot, lots, difference, fresh);
        }
    }

    private void take(Spot spot, TreeMap<LotKey, Long> lots, long amount) {
        List<Taken> taken = Netting.take(lots, amount, lot -> true);
        taken.forEach(part -> draft(spot, part.lot(), -part.amount()));
    }

    private void add(Spot spot, TreeMap<LotKey, Long> lots, long amount, LotKey fresh) {
        long left = amount;
        for (Map.Entry<LotKey, Long> lot : lots.entrySet()) {
            long owed = Math.min(left, Math.max(0, -lot.getValue()));
            if (owed > 0) {
                draft(spot, lot.getKey(), owed);
                left -= owed;
            }
        }
        if (left > 0) {
            draft(
                    spot,
                    lots.keySet().stream()
                            .filter(key -> sameLot(key, fresh))
                            .reduce((a, b) -> b)
                            .orElse(fresh),
                    left);
        }
    }

    private static boolean sameLot(LotKey key, LotKey fresh) {
        boolean marked = !fresh.useBy().isEmpty() || !fresh.lot().isEmpty();
        return marked && key.useBy().equals(fresh.useBy()) && key.lot().equals(fresh.lot());
    }

    private void draft(Spot spot, LotKey lot, long amount) {
        drafts.add(new Draft(MovementKind.COUNTED, spot.item(), lot, amount, Json.empty()));
    }
}
