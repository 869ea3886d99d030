package etamine.shell.app.internal;

import etamine.base.Subject;
import etamine.kitchen.today.DayMark;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/** Fourteen days from today with what they hold. Arrow keys go from day to day; Enter opens the day's first mark. */
final class WeekRibbon extends Composite {
    private final Days days;
    private final Consumer<Subject> open;
    private final List<DayCell> cells = new ArrayList<>();
    private Map<LocalDate, List<DayMark>> marks = Map.of();

    WeekRibbon(Composite parent, Days days, Consumer<Subject> open) {
        super(parent, SWT.NONE);
        this.days = days;
        this.open = open;
        GridLayout layout = Layouts.plain(Days.SPAN);
        layout.makeColumnsEqualWidth = true;
        setLayout(layout);
        setBackground(Palette.of(this).paper());
        for (int at = 0; at < Days.SPAN; at++) {
            DayCell cell = new DayCell(this);
            cell.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
            cell.addListener(SWT.MouseDown, event -> pick(cell));
            cell.addListener(SWT.MouseDoubleClick, event -> openFirst());
            cell.addListener(SWT.KeyDown, this::key);
            cells.add(cell);
        }
        daysChanged();
    }

    /** Shows what the days hold. */
    void show(Map<LocalDate, List<DayMark>> newMarks) {
        marks = newMarks;
        daysChanged();
    }

    /** Today or the picked day is another. */
    void daysChanged() {
        int most = marks.values().stream()
                .flatMap(List::stream)
                .mapToInt(DayCell::covers)
                .max()
                .orElse(0);
        for (int at = 0; at < cells.size(); at++) {
            LocalDate day = days.today().plusDays(at);
            DayCell cell = cells.get(at);
            cell.show(new DayCell.Face(day, at == 0, day.equals(days.picked()), marksOf(day), most));
            Spoken.id(cell, "day:" + day);
            if (day.equals(days.picked())) {
                setTabList(new Control[] {cell});
            }
        }
    }

    @Override
    public boolean setFocus() {
        return !picked().isDisposed() && picked().forceFocus();
    }

    private List<DayMark> marksOf(LocalDate day) {
        return marks.getOrDefault(day, List.of()).stream()
                .sorted(Comparator.comparing(DayMark::kind))
                .toList();
    }

    private DayCell picked() {
        return cells.stream()
                .filter(cell -> cell.day().equals(days.picked()))
                .findFirst()
                .orElse(cells.get(0));
    }

    private void pick(DayCell cell) {
        days.pick(cell.day());
        cell.forceFocus();
    }

    private void key(Event event) {
        int step = switch (event.keyCode) {
            case SWT.ARROW_LEFT, SWT.ARROW_UP -> -1;
            case SWT.ARROW_RIGHT, SWT.ARROW_DOWN -> 1;
            case SWT.PAGE_UP -> -7;
            case SWT.PAGE_DOWN -> 7;
            case SWT.HOME -> -Days.SPAN;
            case SWT.END -> Days.SPAN;
            default -> 0;
        };
        if (step != 0) {
            days.pick(days.picked().plusDays(step));
            picked().forceFocus();
        } else if (event.character == SWT.CR) {
            openFirst();
        }
    }

    private void openFirst() {
        marksOf(days.picked()).stream().findFirst().ifPresent(mark -> open.accept(mark.subject()));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        Point size = super.computeSize(wHint, hHint, changed);
        return new Point(Math.max(size.x, 700), size.y);
    }
}
