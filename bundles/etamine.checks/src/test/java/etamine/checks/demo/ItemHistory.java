package etamine.checks.demo;

import etamine.kitchen.item.Item;
import etamine.kitchen.par.Par;
import etamine.measures.Quantity;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** Eight weeks of one item on its shelf: what came, was used, spoilt and counted. Never below nothing. Used once. */
final class ItemHistory {
    /** In the week before today only the most needed of these came, so they are short. */
    private static final Set<String> SCARCE = Set.of("pearl-barley", "hazelnut", "mushroom", "dark-chocolate");
    /** Of pieces and of grams or millilitres alike. */
    private static final long GRAIN = 1_000;

    private static final List<String> MISHAPS =
            List.of("tray dropped", "burnt", "gone soft", "cut wrong", "left out of the cold", "sent back by a guest");

    private final Item item;
    private final Supply supply;
    private final Map<LocalDate, Long> use;
    private final ItemDoors doors;
    private final Terms terms;
    private final Random chance;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Lot> lots = new ArrayList<>();
    private long posted;
    private long postedToStaff;

    /** So much of the item with the same last day. */
    private record Lot(LocalDate useBy, long amount) {}

    /**
     * One entry of the stock ledger.
     *
     * @param item the item
     * @param at the day
     * @param time the time of day, UTC
     * @param kind as in the exchange form
     * @param amount base units, signed only for a count
     * @param useBy the lot's last day, {@link LocalDate#MAX} when it has none
     * @param list the price list it was bought from
     * @param reason why; empty when none
     */
    record Entry(
            Item item,
            LocalDate at,
            String time,
            String kind,
            long amount,
            LocalDate useBy,
            Optional<ListedPack> list,
            String reason) {}

    /**
     * What the kitchen has settled about an item.
     *
     * @param par how much should be there
     * @param onOrderToday whether today's delivery is still on its way
     * @param forgottenFrom the day from which nobody looks at it any more
     */
    record Terms(Optional<Par> par, boolean onOrderToday, Optional<LocalDate> forgottenFrom) {}

    ItemHistory(Item item, Supply supply, ItemDoors doors, Terms terms) {
        this.item = item;
        this.supply = supply;
        this.doors = doors;
        this.use = doors.taken();
        this.terms = terms;
        this.chance = new Random(item.id().hashCode());
    }

    List<Entry> upTo(LocalDate today, LocalDate first) {
        open(first);
        for (LocalDate day = first; !day.isAfter(today); day = day.plusDays(1)) {
            discard(day);
            if (supply.comes(day, first) && !(day.equals(today) && terms.onOrderToday())) {
                restock(day, first, today);
            }
            if (day.isBefore(today)) {
                bring(day);
                serve(day);
            }
        }
        return entries;
    }

    private void open(LocalDate first) {
        long start = Math.max(level(first) * 19 / 20, needed(first, first.plusDays(3)) * 6 / 5);
        long amount = Math.max(GRAIN, start / GRAIN * GRAIN);
        LocalDate useBy = lastDay(first, Math.max(3, life(first) * 2 / 3));
        lots.add(new Lot(useBy, amount));
        entries.add(new Entry(item, first, "05:00", "opening", amount, useBy, supply.on(first), ""));
    }

    private void discard(LocalDate day) {
        if (terms.forgottenFrom().filter(from -> !day.isBefore(from)).isPresent()) {
            return;
        }
        long past = lots.stream()
                .filter(lot -> lot.useBy().isBefore(day))
                .mapToLong(Lot::amount)
                .sum();
        if (past > 0) {
            post(day, "06:10");
            take(past);
            entries.add(new Entry(item, day, "06:15", "wasted", past, LocalDate.MAX, Optional.empty(), "past its day"));
        }
    }

    private void restock(LocalDate day, LocalDate first, LocalDate today) {
        LocalDate next = day.plusDays(1);
        while (!supply.comes(next, first) && next.isBefore(today.plusDays(ServiceDays.DAYS_AHEAD))) {
            next = next.plusDays(1);
        }
        if (terms.forgottenFrom().filter(from -> !day.isBefore(from)).isPresent()) {
            return;
        }
        long lotsToCome = supply.packs().isEmpty() ? toMake(day, next) : toOrder(day, next);
        if (SCARCE.contains(item.id()) && day.isAfter(today.minusDays(8))) {
            lotsToCome = lotsFor(missing(day, next.isAfter(today) ? today : next));
        }
        if (lotsToCome <= 0) {
            return;
        }
        long amount = lotsToCome * supply.lot();
        LocalDate useBy = lastDay(day, life(day));
        lots.add(new Lot(useBy, amount));
        lots.sort(Comparator.comparing(Lot::useBy));
        String kind = supply.packs().isEmpty() ? "made" : "received";
        String time = supply.packs().isEmpty() ? "15:30" : "06:30";
        entries.add(new Entry(item, day, time, kind, amount, useBy, supply.on(day), ""));
    }

    private long toMake(LocalDate day, LocalDate next) {
        return lotsFor(missing(day, next));
    }

    /** As many packs as come closest to the par, and never less than reaches the next delivery. */
    private long toOrder(LocalDate day, LocalDate next) {
        long missing = lotsFor(missing(day, next));
        long toPar = (level(day) - onHand() + supply.lot() / 2) / supply.lot();
        return terms.par()
                .flatMap(Par::orderAt)
                .map(Quantity::toBase)
                .map(orderAt -> onHand() > orderAt ? missing : Math.max(1, Math.max(missing, toPar)))
                .orElse(Math.max(missing, toPar));
    }

    /** What use until the next delivery lacks, with a little to spare, when lots past their day are not used. */
    private long missing(LocalDate from, LocalDate until) {
        List<Lot> left = new ArrayList<>(lots);
        long missing = 0;
        for (LocalDate day = from; day.isBefore(until); day = day.plusDays(1)) {
            LocalDate on = day;
            left.removeIf(lot -> lot.useBy().isBefore(on));
            long wanted = use.getOrDefault(day, 0L) * 21 / 20;
            while (wanted > 0 && !left.isEmpty()) {
                Lot soonest = left.remove(0);
                if (soonest.amount() > wanted) {
                    left.add(0, new Lot(soonest.useBy(), soonest.amount() - wanted));
                }
                wanted -= Math.min(wanted, soonest.amount());
            }
            missing += wanted;
        }
        return missing;
    }

    private long lotsFor(long missing) {
        return Math.max(0, (missing + supply.lot() - 1) / supply.lot());
    }

    /** What came from elsewhere in the house. */
    private void bring(LocalDate day) {
        doors.brought(day).ifPresent(event -> {
            LocalDate useBy = lastDay(day, life(day));
            lots.add(new Lot(useBy, event.amount()));
            lots.sort(Comparator.comparing(Lot::useBy));
            entries.add(
                    new Entry(item, day, "14:00", event.kind(), event.amount(), useBy, supply.on(day), event.reason()));
        });
    }

    private void serve(LocalDate day) {
        take(use.getOrDefault(day, 0L));
        posted += doors.menu(day);
        postedToStaff += doors.staff(day);
        doors.gone(day)
                .ifPresent(event -> entries.add(new Entry(
                        item,
                        day,
                        "21:45",
                        event.kind(),
                        event.amount(),
                        LocalDate.MAX,
                        Optional.empty(),
                        event.reason())));
        if (day.getDayOfWeek() == DayOfWeek.THURSDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY) {
            post(day, "22:30");
        }
        if (day.getDayOfWeek() == DayOfWeek.SUNDAY) {
            mishap(day);
        }
        if (day.getDayOfWeek() == DayOfWeek.MONDAY) {
            count(day);
        }
    }

    private void mishap(LocalDate day) {
        boolean perishable = item.storage().equals("chilled");
        long lost = needed(day.minusDays(6), day.plusDays(1)) * (2 + chance.nextInt(4)) / 100 / GRAIN * GRAIN;
        if (perishable && chance.nextInt(7) == 0 && lost > 0 && spare(day) > lost) {
            take(lost);
            String reason = MISHAPS.get(chance.nextInt(MISHAPS.size()));
            entries.add(new Entry(item, day, "22:40", "wasted", lost, LocalDate.MAX, Optional.empty(), reason));
        }
    }

    /** Every fourth Monday; a little less is there than was written down, now and then a little more. */
    private void count(LocalDate day) {
        boolean monthly = day.getDayOfMonth() >= 20 && day.getDayOfMonth() < 27;
        long off = onHand() * (chance.nextInt(5) - 3) / 100 / GRAIN * GRAIN;
        if (!monthly || off == 0 || chance.nextInt(3) > 0 || -off > spare(day)) {
            return;
        }
        if (off < 0) {
            take(-off);
        } else {
            Lot last = lots.remove(lots.size() - 1);
            lots.add(new Lot(last.useBy(), last.amount() + off));
        }
        LocalDate useBy = off > 0 ? lots.get(lots.size() - 1).useBy() : LocalDate.MAX;
        entries.add(new Entry(item, day, "10:00", "counted", off, useBy, Optional.empty(), "monthly count"));
    }

    private void post(LocalDate day, String time) {
        if (posted > 0) {
            String kind = item.group().equals("Drinks") ? "sold" : "used";
            entries.add(new Entry(item, day, time, kind, posted, LocalDate.MAX, Optional.empty(), ""));
            posted = 0;
        }
        if (postedToStaff > 0) {
            entries.add(new Entry(
                    item,
                    day,
                    time,
                    "staff",
                    postedToStaff,
                    LocalDate.MAX,
                    Optional.empty(),
                    "staff meals and coffee"));
            postedToStaff = 0;
        }
    }

    private void take(long amount) {
        long left = amount;
        while (left > 0) {
            if (lots.isEmpty()) {
                throw new IllegalStateException(item.name() + " runs out by " + left);
            }
            Lot soonest = lots.remove(0);
            if (soonest.amount() > left) {
                lots.add(0, new Lot(soonest.useBy(), soonest.amount() - left));
            }
            left -= Math.min(left, soonest.amount());
        }
    }

    /** What is not needed before something can come again. */
    private long spare(LocalDate day) {
        return onHand() - needed(day.plusDays(1), day.plusDays(4));
    }

    private long onHand() {
        return lots.stream().mapToLong(Lot::amount).sum();
    }

    private long needed(LocalDate from, LocalDate until) {
        return from.datesUntil(until)
                .mapToLong(day -> use.getOrDefault(day, 0L))
                .sum();
    }

    private long level(LocalDate day) {
        return terms.par().map(level -> level.on(day.getDayOfWeek()).toBase()).orElse(0L);
    }

    private int life(LocalDate day) {
        return supply.on(day)
                .map(pack -> pack.life().getDays())
                .orElseGet(() -> item.keeps().map(keep -> keep.getDays()).orElse(0));
    }

    private static LocalDate lastDay(LocalDate from, int days) {
        return days == 0 ? LocalDate.MAX : from.plusDays(days);
    }
}
