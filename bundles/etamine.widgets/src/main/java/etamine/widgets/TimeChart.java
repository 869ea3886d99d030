package etamine.widgets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/**
 * Values over days as lines, such as prices or food cost week by week. Each line has a shape of its own at its values
 * and its name at its end; the arrow keys go from value to value, whose figures then stand above the picture.
 */
public final class TimeChart extends PickDrawing {
    private static final int HALF = 3;
    private Chart chart = new Chart("", List.of(), Optional.empty());

    /**
     * One value.
     *
     * @param id what it stands for; another one for each value of the chart
     * @param day when
     * @param value how much
     * @param text both in words
     */
    public record Spot(String id, LocalDate day, double value, String text) {}

    /**
     * Values that belong together, in the order of their days.
     *
     * @param name what they are of
     * @param spots the values
     * @param holds whether a value holds until the next one, as a price does, so that the line goes in steps
     */
    public record Line(String name, List<Spot> spots, boolean holds) {

        /** Copies the list. */
        public Line {
            spots = List.copyOf(spots);
        }
    }

    /**
     * All of it.
     *
     * @param title what is measured, with its unit
     * @param lines the lines
     * @param level a level to compare with, such as a target
     */
    public record Chart(String title, List<Line> lines, Optional<ScatterPlot.Cut> level) {

        /** Copies the list. */
        public Chart {
            lines = List.copyOf(lines);
        }

        List<Spot> spots() {
            return lines.stream().flatMap(line -> line.spots().stream()).toList();
        }
    }

    /** No lines yet. */
    public TimeChart(Composite parent) {
        super(parent);
    }

    /** Shows this, keeping the picked value where it is still there. */
    public void show(Chart newChart) {
        chart = newChart;
        offer(chart.spots().stream().map(Spot::id).toList());
        redraw();
    }

    /** Calls back with the id of the value a person picked. */
    public TimeChart onPick(Consumer<String> listener) {
        listen(listener);
        return this;
    }

    @Override
    public String description() {
        return reading()
                .orElseGet(() -> chart.title() + ". "
                        + chart.lines().stream()
                                .map(line -> line.name() + ": "
                                        + line.spots().stream().map(Spot::text).collect(Collectors.joining(", ")))
                                .collect(Collectors.joining("; ")));
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? 420 : wHint, hHint == SWT.DEFAULT ? 220 : hHint);
    }

    @Override
    protected void draw(GC gc, Rectangle area, Palette palette) {
        places().clear();
        List<Spot> spots = chart.spots();
        if (spots.isEmpty()) {
            gc.setForeground(palette.quiet());
            text(gc, "No values yet", 8, 8, area.width - 16);
            return;
        }
        PlotArea scales = scales(gc, area, spots);
        scales.drawLevels(gc, palette, reading().orElse(chart.title()));
        DayAxis.over(scales, spots).draw(gc, scales.box(), palette);
        chart.level().ifPresent(level -> level(gc, scales, level, palette));
        LabelPlaces labels = new LabelPlaces(new Rectangle(0, 0, area.width, area.height));
        for (int at = 0; at < chart.lines().size(); at++) {
            line(gc, scales, at, palette);
        }
        places().values().forEach(labels::take);
        for (int at = 0; at < chart.lines().size(); at++) {
            name(gc, at, labels, palette);
        }
    }

    private PlotArea scales(GC gc, Rectangle area, List<Spot> spots) {
        List<Double> up = new ArrayList<>(spots.stream().map(Spot::value).toList());
        chart.level().ifPresent(level -> up.add(level.at()));
        int names = chart.lines().size() < 2
                ? 0
                : chart.lines().stream()
                        .mapToInt(line -> gc.textExtent(line.name()).x)
                        .max()
                        .orElse(0);
        int room = Math.min(area.width / 3, names);
        Rectangle left = new Rectangle(area.x, area.y, area.width - room, area.height);
        List<Double> days =
                spots.stream().map(spot -> (double) spot.day().toEpochDay()).toList();
        PlotArea scales = PlotArea.over(gc, left, days, up);
        return new PlotArea(scales.box(), DayAxis.scale(days), scales.up());
    }

    private static void level(GC gc, PlotArea scales, ScatterPlot.Cut level, Palette palette) {
        Rectangle box = scales.box();
        gc.setForeground(palette.text(Tone.WARN));
        gc.setLineStyle(SWT.LINE_DASH);
        gc.drawLine(box.x, scales.y(level.at()), box.x + box.width, scales.y(level.at()));
        gc.setLineStyle(SWT.LINE_SOLID);
        int above = scales.y(level.at()) - gc.getFontMetrics().getHeight() - 1;
        gc.drawText(level.label(), box.x + 4, above, SWT.DRAW_TRANSPARENT);
    }

    private void line(GC gc, PlotArea scales, int number, Palette palette) {
        Line line = chart.lines().get(number);
        List<Integer> path = new ArrayList<>();
        for (Spot spot : line.spots()) {
            int x = scales.x(spot.day().toEpochDay());
            int y = scales.y(spot.value());
            if (line.holds() && !path.isEmpty()) {
                path.add(x);
                path.add(path.get(path.size() - 2));
            }
            path.add(x);
            path.add(y);
            places().put(spot.id(), new Rectangle(x - HALF, y - HALF, HALF * 2 + 1, HALF * 2 + 1));
        }
        gc.setForeground(palette.series(number));
        gc.setLineWidth(2);
        gc.drawPolyline(path.stream().mapToInt(Integer::intValue).toArray());
        line.spots().forEach(spot -> spot(gc, number, spot, palette));
    }

    private void spot(GC gc, int number, Spot spot, Palette palette) {
        Rectangle place = places().get(spot.id());
        gc.setForeground(palette.ink());
        PlotShape.of(number).draw(gc, place.x + HALF, place.y + HALF, HALF, palette.series(number));
        if (isPicked(spot.id())) {
            gc.setLineWidth(2);
            gc.setForeground(palette.accent());
            gc.drawOval(place.x - 4, place.y - 4, place.width + 7, place.height + 7);
        }
    }

    private void name(GC gc, int number, LabelPlaces labels, Palette palette) {
        Line line = chart.lines().get(number);
        if (chart.lines().size() > 1 && !line.spots().isEmpty()) {
            String last = line.spots().get(line.spots().size() - 1).id();
            gc.setForeground(palette.ink());
            labels.put(places().get(last), gc.textExtent(line.name()))
                    .ifPresent(room -> gc.drawText(line.name(), room.x, room.y, SWT.DRAW_TRANSPARENT));
        }
    }

    @Override
    protected Optional<String> next(Event event) {
        int[] to = direction(event.keyCode);
        List<String> ids = chart.spots().stream().map(Spot::id).toList();
        int at = picked().map(ids::indexOf).orElse(to[0] + to[1] > 0 ? -1 : ids.size());
        int wanted = Math.max(0, Math.min(ids.size() - 1, at + to[0] + to[1]));
        return ids.isEmpty() ? Optional.empty() : Optional.of(ids.get(wanted));
    }

    private Optional<String> reading() {
        return picked().flatMap(id -> chart.lines().stream()
                .flatMap(line -> line.spots().stream()
                        .filter(spot -> spot.id().equals(id))
                        .map(spot -> chart.lines().size() > 1 ? line.name() + ": " + spot.text() : spot.text()))
                .findFirst());
    }
}
