package etamine.inventory.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Lots of one item after what was taken without naming a lot is set against them, the first to expire first: within its
 * place, and what was taken from no particular place from anywhere. What then is still below zero was never entered.
 */
final class Netting {
    private Netting() {}

    static Map<LotKey, Long> of(Map<LotKey, Long> amounts) {
        TreeMap<LotKey, Long> lots = new TreeMap<>(amounts);
        for (Map.Entry<LotKey, Long> entry : amounts.entrySet()) {
            if (entry.getValue() < 0) {
                LotKey owing = entry.getKey();
                settle(lots, owing, lot -> lot.place().equals(owing.place()));
                if (owing.place().isEmpty()) {
                    settle(lots, owing, lot -> true);
                }
            }
        }
        lots.values().removeIf(amount -> amount == 0);
        return lots;
    }

    private static void settle(TreeMap<LotKey, Long> lots, LotKey owing, Predicate<LotKey> from) {
        long owed = -lots.get(owing);
        for (Taken taken : take(lots, owed, lot -> lot.dimension() == owing.dimension() && from.test(lot))) {
            lots.merge(taken.lot(), -taken.amount(), Math::addExact);
            lots.merge(owing, taken.amount(), Math::addExact);
        }
    }

    /**
     * So much of a lot.
     *
     * @param lot the lot
     * @param amount how much of it, more than zero
     */
    record Taken(LotKey lot, long amount) {}

    /** Takes up to {@code wanted} from lots that hold something, the first to expire first; may come to less. */
    static List<Taken> take(Map<LotKey, Long> lots, long wanted, Predicate<LotKey> from) {
        List<LotKey> order = new ArrayList<>(lots.keySet());
        Collections.sort(order);
        List<Taken> taken = new ArrayList<>();
        long left = wanted;
        for (LotKey lot : order) {
            long there = lots.get(lot);
            if (left > 0 && there > 0 && from.test(lot)) {
                long part = Math.min(left, there);
                taken.add(new Taken(lot, part));
                left -= part;
            }
        }
        return taken;
    }

    static long sum(List<Taken> taken) {
        return taken.stream().mapToLong(Taken::amount).reduce(0, Math::addExact);
    }
}
