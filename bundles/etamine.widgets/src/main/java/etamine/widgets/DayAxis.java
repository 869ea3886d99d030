package etamine.widgets;

import java.time.LocalDate;
import java.time.Period;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/**
 * Days from left to right with a mark every day, week, month, quarter or year, whichever leaves room for words.
 *
 * @param first the first day
 * @param last the last day
 * @param marks the days that are named
 * @param form how they are named
 */
record DayAxis(LocalDate first, LocalDate last, List<LocalDate> marks, DateTimeFormatter form) {
    private static final int ROOM = 70;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("uuuu", Locale.ENGLISH);

    /** A scale that spans these days exactly, as day numbers; a single day gets one to each side. */
    static AxisScale scale(List<Double> days) {
        double least = Collections.min(days);
        double most = Collections.max(days);
        return most > least ? new AxisScale(least, most, 1) : new AxisScale(least - 1, most + 1, 1);
    }

    static DayAxis over(PlotArea scales, List<TimeChart.Spot> spots) {
        LocalDate first = LocalDate.ofEpochDay((long) scales.across().low());
        LocalDate last = LocalDate.ofEpochDay((long) scales.across().high());
        return spots.isEmpty() ? new DayAxis(first, last, List.of(), DAY) : over(first, last, scales.box().width);
    }

    /** The finest marks that still leave room for their words over that width. */
    static DayAxis over(LocalDate first, LocalDate last, int width) {
        long days = Math.max(1, ChronoUnit.DAYS.between(first, last));
        long most = Math.max(2, width / ROOM);
        if (days <= most) {
            return new DayAxis(first, last, marks(first, last, Period.ofDays(1)), DAY);
        }
        for (int weeks : new int[] {1, 2}) {
            if (days / (7 * weeks) <= most) {
                LocalDate monday = first.plusDays((8 - first.getDayOfWeek().getValue()) % 7);
                return new DayAxis(first, last, marks(monday, last, Period.ofWeeks(weeks)), DAY);
            }
        }
        for (int months : new int[] {1, 3}) {
            if (days / (30L * months) <= most) {
                LocalDate start = first.minusDays(1).withDayOfMonth(1).plusMonths(1);
                return new DayAxis(first, last, marks(start, last, Period.ofMonths(months)), MONTH);
            }
        }
        long years = 1 + days / (365 * most);
        LocalDate start = first.minusDays(1).withDayOfYear(1).plusYears(1);
        return new DayAxis(first, last, marks(start, last, Period.ofYears((int) years)), YEAR);
    }

    void draw(GC gc, Rectangle box, Palette palette) {
        double days = Math.max(1, ChronoUnit.DAYS.between(first, last));
        int bottom = box.y + box.height;
        for (LocalDate mark : marks) {
            int x = box.x + (int) Math.round(ChronoUnit.DAYS.between(first, mark) / days * box.width);
            String text = mark.format(form);
            int half = gc.textExtent(text).x / 2;
            gc.setForeground(palette.line());
            gc.drawLine(x, box.y, x, bottom + 4);
            gc.setForeground(palette.quiet());
            gc.drawText(text, Math.max(2, x - half), bottom + 5, SWT.DRAW_TRANSPARENT);
        }
    }

    private static List<LocalDate> marks(LocalDate from, LocalDate to, Period step) {
        List<LocalDate> marks = new ArrayList<>();
        for (LocalDate day = from; !day.isAfter(to); day = day.plus(step)) {
            marks.add(day);
        }
        return List.copyOf(marks);
    }
}
