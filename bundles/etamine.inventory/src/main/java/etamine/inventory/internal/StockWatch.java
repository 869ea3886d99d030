package etamine.inventory.internal;

import etamine.base.Subject;
import etamine.inventory.StockLine;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.stock.Lot;
import etamine.kitchen.today.Call;
import etamine.kitchen.today.CallSource;
import etamine.kitchen.today.DayMark;
import etamine.kitchen.today.DayMarkSource;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Calls what is under par and what is at or past its marked day, and marks those days on the week ribbon. */
@Component
public final class StockWatch implements CallSource, DayMarkSource {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final int MOST_SHORT_CALLS = 6;
    private static final String CAUTION = " Date mark and local rules decide.";

    private final ShelfReport report;
    private final KnownItems items;
    private final PlaceShelf places;
    private final Kitchen kitchen;

    /** Watches that stock by the house's day. */
    @Activate
    public StockWatch(
            @Reference ShelfReport report,
            @Reference KnownItems items,
            @Reference PlaceShelf places,
            @Reference Kitchen kitchen) {
        this.report = report;
        this.items = items;
        this.places = places;
        this.kitchen = kitchen;
    }

    @Override
    public List<Call> calls(Instant now) {
        LocalDate today = now.atZone(kitchen.house().zone()).toLocalDate();
        List<StockLine> lines = report.now(today);
        List<Call> calls = new ArrayList<>();
        lines.forEach(line -> line.lots().forEach(lot -> expiry(lot, today).ifPresent(calls::add)));
        List<StockLine> under = lines.stream()
                .filter(line ->
                        line.shortBy().filter(missing -> !missing.isZero()).isPresent())
                .sorted(Comparator.comparing(line -> line.percentOfPar().orElse(0)))
                .toList();
        under.stream().limit(MOST_SHORT_CALLS).map(this::under).forEach(calls::add);
        if (under.size() > MOST_SHORT_CALLS) {
            calls.add(new Call(
                    "under-par/more",
                    Call.Urgency.SOON,
                    (under.size() - MOST_SHORT_CALLS) + " more items are under par.",
                    Optional.empty(),
                    new Subject("stock", under.get(MOST_SHORT_CALLS).item())));
        }
        return calls;
    }

    private Call under(StockLine line) {
        return new Call(
                "under-par/" + line.item(),
                Call.Urgency.TODAY,
                line.name() + ": " + text(line.shortBy().orElseThrow()) + " under par.",
                Optional.empty(),
                new Subject("stock", line.item()));
    }

    private Optional<Call> expiry(Lot lot, LocalDate today) {
        if (lot.quantity().signum() <= 0
                || lot.useBy().filter(day -> !day.isAfter(today)).isEmpty()) {
            return Optional.empty();
        }
        LocalDate day = lot.useBy().orElseThrow();
        boolean past = day.isBefore(today);
        String where = lot.place().isEmpty() ? "" : " in " + places.name(lot.place());
        String text = items.name(lot.item()) + ", " + text(lot.quantity()) + where
                + (past ? ": past its day, " + DAY.format(day) + "." : ": today is its day.") + CAUTION;
        return Optional.of(new Call(
                "use-by/" + lot.item() + "/" + lot.place() + "/" + day,
                past ? Call.Urgency.NOW : Call.Urgency.TODAY,
                text,
                Optional.of(day.plusDays(1).atStartOfDay(kitchen.house().zone()).toInstant()),
                new Subject("stock", lot.item())));
    }

    @Override
    public List<DayMark> marks(LocalDate from, LocalDate to) {
        TreeMap<LocalDate, TreeSet<String>> days = new TreeMap<>();
        for (StockLine line : report.now(kitchen.today())) {
            line.lots().stream()
                    .filter(lot -> lot.quantity().signum() > 0)
                    .flatMap(lot -> lot.useBy().stream())
                    .filter(day -> !day.isBefore(from) && !day.isAfter(to))
                    .forEach(day ->
                            days.computeIfAbsent(day, key -> new TreeSet<>()).add(line.item()));
        }
        List<DayMark> marks = new ArrayList<>();
        days.forEach((day, ids) -> ids.forEach(id -> marks.add(
                new DayMark(day, DayMark.Kind.EXPIRY, items.name(id) + ", last day", new Subject("stock", id)))));
        return marks;
    }

    private String text(Quantity quantity) {
        return QuantityText.format(quantity, kitchen.house().measures());
    }
}
