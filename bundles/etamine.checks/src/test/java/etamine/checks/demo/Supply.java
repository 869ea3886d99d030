package etamine.checks.demo;

import etamine.kitchen.item.Item;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How an item comes to the shelf: bought in packs on its supplier's days, or made on days of its own.
 *
 * @param packs what it is bought in, every price date; empty when it is made
 * @param days weekdays on which it can come
 * @param everyWeeks how many weeks lie between two makings; 1 when it is bought
 * @param lot base units that come at once
 */
record Supply(List<ListedPack> packs, Set<DayOfWeek> days, int everyWeeks, long lot) {
    private static final int WEEK = 7;
    private static final long DECILITRE_OR_HECTOGRAM = 100_000;

    /** The cheapest pack that a kitchen using that much a week empties while it keeps, else the smallest. */
    static Optional<Supply> bought(WrittenKitchen kitchen, Item item, long weekly) {
        List<ListedPack> offered = kitchen.packs(item.id());
        Comparator<ListedPack> cheapest = Comparator.comparing(ListedPack::perBase);
        return offered.stream()
                .filter(pack ->
                        pack.content() * WEEK <= weekly * Math.min(pack.life().getDays(), 8 * WEEK))
                .min(cheapest)
                .or(() -> offered.stream().min(Comparator.comparingLong(ListedPack::content)))
                .map(chosen -> new Supply(
                        offered.stream()
                                .filter(pack -> pack.code().equals(chosen.code()))
                                .toList(),
                        kitchen.deliveryDays(chosen.supplier()),
                        1,
                        chosen.content()));
    }

    /** Made on Wednesdays; what keeps less than a week twice a week, what keeps for months every four weeks. */
    static Supply made(Item item) {
        int keeps =
                item.keeps().map(keep -> keep.getDays() + 30 * keep.getMonths()).orElse(1);
        Set<DayOfWeek> days = keeps < WEEK ? Set.of(DayOfWeek.THURSDAY, DayOfWeek.SUNDAY) : Set.of(DayOfWeek.WEDNESDAY);
        return new Supply(List.of(), days, keeps >= 4 * WEEK ? 4 : 1, DECILITRE_OR_HECTOGRAM);
    }

    /** Whether it comes on that day of a history that began on the first. */
    boolean comes(LocalDate day, LocalDate first) {
        long week = first.datesUntil(day.plusDays(1)).count() / WEEK;
        return days.contains(day.getDayOfWeek()) && week % everyWeeks == 0;
    }

    /** The price list that holds on that day; the first one for days before it. */
    Optional<ListedPack> on(LocalDate day) {
        Comparator<ListedPack> latest = Comparator.comparing(ListedPack::from);
        return packs.stream()
                .filter(pack -> !pack.from().isAfter(day))
                .max(latest)
                .or(() -> packs.stream().min(latest));
    }
}
