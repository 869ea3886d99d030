package etamine.diary.ui.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.diary.ServiceDiary;
import etamine.kitchen.covers.Sale;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.use.ExpectedUse.DayUse;
import etamine.measures.MeasureStyle;
import etamine.measures.QuantityText;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** What the diary bench shows, without a widget. */
final class DiaryModel {
    /** How many days are shown at once. */
    static final int FORTNIGHT = 14;

    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter LONG = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);

    private final ServiceDiary diary;
    private final Kitchen kitchen;
    private final KitchenNames names;

    DiaryModel(ServiceDiary diary, Kitchen kitchen, KitchenNames names) {
        this.diary = diary;
        this.kitchen = kitchen;
        this.names = names;
    }

    /** Two weeks from the Monday of that day's week. */
    List<DayCell> fortnight(LocalDate day) {
        LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        LocalDate last = monday.plusDays(FORTNIGHT - 1L);
        Map<LocalDate, Integer> covers = diary.covers(monday, last);
        Map<LocalDate, Long> sold = new HashMap<>();
        diary.sales(monday, last).forEach(sale -> sold.merge(sale.date(), sale.sold(), Long::sum));
        List<DayCell> cells = new ArrayList<>();
        for (LocalDate date = monday; !date.isAfter(last); date = date.plusDays(1)) {
            String note = sold.containsKey(date) ? sold.get(date) + " sold" : "";
            boolean today = date.equals(kitchen.today());
            String heading = today ? "Today, " + DATE.format(date) : SHORT.format(date);
            cells.add(new DayCell(date, heading, Optional.ofNullable(covers.get(date)), note, today));
        }
        return cells;
    }

    /** The day in words. */
    String title(LocalDate day) {
        return LONG.format(day);
    }

    /** The day in a few letters. */
    String shortTitle(LocalDate day) {
        return SHORT.format(day);
    }

    /** Saves the covers of a day; not on the window's thread. */
    void saveCovers(LocalDate date, OptionalInt covers) {
        diary.setCovers(Map.of(date, covers));
    }

    /** Rows of the menu mix: recipe, portions per cover. */
    List<List<String>> mix() {
        return diary.mix().entrySet().stream()
                .map(entry ->
                        List.of(names.recipe(entry.getKey()), entry.getValue().toString()))
                .toList();
    }

    /** Rows of what was sold on a day: recipe, number. */
    List<List<String>> sold(LocalDate day) {
        return diary.sales(day, day).stream()
                .map(sale -> List.of(names.recipe(sale.recipe()), String.valueOf(sale.sold())))
                .toList();
    }

    /** Rows of what is stated for a day: item, quantity. */
    List<List<String>> stated(LocalDate day) {
        return diary.writtenUse(day, day).stream()
                .map(use -> List.of(names.item(use.item()), use.quantity().toString()))
                .toList();
    }

    /** What was typed into the menu mix. */
    Attempt editMix(int row, List<String> cells) {
        return new RowEdits(diary, names).mix(row, cells);
    }

    /** What was typed into a day's sales. */
    Attempt editSold(LocalDate day, int row, List<String> cells) {
        return new RowEdits(diary, names).sold(day, row, cells);
    }

    /** What was typed into a day's stated use. */
    Attempt editStated(LocalDate day, int row, List<String> cells) {
        return new RowEdits(diary, names).stated(day, row, cells);
    }

    /** Where a day's expected use comes from. */
    Explanation explain(LocalDate day) {
        List<Explanation> parts = new ArrayList<>();
        Optional<Integer> covers = Optional.ofNullable(diary.covers(day, day).get(day));
        parts.add(Explanation.leaf(
                "Covers",
                covers.map(String::valueOf).orElse("not entered"),
                covers.isPresent() ? "entered in the diary" : "the sales of that weekday stand in for them"));
        for (Sale sale : diary.sales(day, day)) {
            parts.add(Explanation.leaf(names.recipe(sale.recipe()), sale.sold() + " sold", "")
                    .about(new Subject("recipe", sale.recipe())));
        }
        names.expectedUse().ifPresent(expected -> parts.add(use(expected.between(day, day))));
        return Explanation.of(title(day), "", parts);
    }

    private Explanation use(List<DayUse> uses) {
        return Explanation.of("Expected use", "", uses.stream().map(this::use).toList());
    }

    private Explanation use(DayUse use) {
        MeasureStyle style = kitchen.house().measures();
        List<Explanation> parts = use.parts().entrySet().stream()
                .map(part ->
                        Explanation.leaf(names.recipe(part.getKey()), QuantityText.format(part.getValue(), style), ""))
                .toList();
        String source = switch (use.source()) {
            case "written" -> "stated in the diary";
            case "covers" -> "covers times menu mix";
            default -> "the sales of that weekday";
        };
        return new Explanation(
                names.item(use.item()),
                QuantityText.format(use.quantity(), style),
                source,
                parts,
                Optional.of(new Subject("item", use.item())));
    }
}
