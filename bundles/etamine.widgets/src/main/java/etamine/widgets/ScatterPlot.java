package etamine.widgets;

import java.util.ArrayList;
import java.util.Comparator;
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
 * Named points over two scales, cut into four fields, such as plates by how often they sell and what they earn. Each
 * kind of point has a shape and a colour. The arrow keys go to the next point in that direction; a click picks one.
 */
public final class ScatterPlot extends PickDrawing {
    private static final int HALF = 6;
    private static final int SHORT = 60;
    private Plot plot = new Plot("", "", List.of(), Optional.empty(), Optional.empty(), List.of());

    /**
     * A kind of points.
     *
     * @param name what they are called
     * @param shape their shape
     * @param series the number of their colour
     */
    public record Kind(String name, PlotShape shape, int series) {}

    /**
     * One point.
     *
     * @param id what it stands for
     * @param label its name
     * @param across its place from left to right
     * @param up its place from bottom to top
     * @param kind what it is
     * @param text its figures in words
     */
    public record Dot(String id, String label, double across, double up, Kind kind, String text) {}

    /**
     * A line between fields.
     *
     * @param at where it stands on its scale
     * @param label what it is, with its figure
     */
    public record Cut(double at, String label) {}

    /**
     * All of it.
     *
     * @param acrossTitle what the scale from left to right measures
     * @param upTitle what the scale from bottom to top measures
     * @param dots the points
     * @param acrossCut the upright line
     * @param upCut the level line
     * @param kinds the kinds there are, for the legend; empty for none
     */
    public record Plot(
            String acrossTitle,
            String upTitle,
            List<Dot> dots,
            Optional<Cut> acrossCut,
            Optional<Cut> upCut,
            List<Kind> kinds) {

        /** Copies the lists. */
        public Plot {
            dots = List.copyOf(dots);
            kinds = List.copyOf(kinds);
        }
    }

    /** Nothing to see yet. */
    public ScatterPlot(Composite parent) {
        super(parent);
    }

    /** Shows this, keeping the picked point where it is still there. */
    public void show(Plot newPlot) {
        plot = newPlot;
        offer(plot.dots().stream().map(Dot::id).toList());
        redraw();
    }

    /** Calls back with the id of the point a person picked. */
    public ScatterPlot onPick(Consumer<String> listener) {
        listen(listener);
        return this;
    }

    @Override
    public String description() {
        String picked = picked().flatMap(this::dot).map(ScatterPlot::words).orElse("");
        String all = plot.dots().stream().map(ScatterPlot::words).collect(Collectors.joining("; "));
        return picked.isEmpty() ? plot.upTitle() + " by " + plot.acrossTitle() + ". " + all : picked;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? 460 : wHint, hHint == SWT.DEFAULT ? 340 : hHint);
    }

    @Override
    protected void draw(GC gc, Rectangle area, Palette palette) {
        places().clear();
        if (plot.dots().isEmpty()) {
            return;
        }
        int line = gc.getFontMetrics().getHeight();
        int beside = gc.textExtent(plot.upTitle()).x + HALF * 4;
        boolean below = beside + legendWidth(gc) > area.width;
        int legend = plot.kinds().isEmpty() || !below ? 0 : line + 4;
        PlotArea scales = scales(gc, new Rectangle(area.x, area.y + legend, area.width, area.height - legend));
        scales.drawAxes(gc, palette, plot.acrossTitle(), plot.upTitle());
        LabelPlaces labels = new LabelPlaces(scales.box());
        cuts(gc, scales, palette, labels);
        legend(gc, new Rectangle(below ? scales.box().x : beside, legend + 4, area.width, line), palette);
        for (Dot dot : plot.dots()) {
            Rectangle place = mark(scales, dot);
            places().put(dot.id(), place);
            labels.take(place);
        }
        dots(gc, palette, labels);
    }

    private PlotArea scales(GC gc, Rectangle area) {
        List<Double> across =
                new ArrayList<>(plot.dots().stream().map(Dot::across).toList());
        List<Double> up = new ArrayList<>(plot.dots().stream().map(Dot::up).toList());
        plot.acrossCut().ifPresent(cut -> across.add(cut.at()));
        plot.upCut().ifPresent(cut -> up.add(cut.at()));
        return PlotArea.over(gc, area, across, up);
    }

    private void cuts(GC gc, PlotArea scales, Palette palette, LabelPlaces labels) {
        Rectangle box = scales.box();
        int line = gc.getFontMetrics().getHeight();
        gc.setLineStyle(SWT.LINE_DASH);
        gc.setForeground(palette.quiet());
        plot.acrossCut().ifPresent(cut -> {
            int x = scales.x(cut.at());
            gc.drawLine(x, box.y, x, box.y + box.height);
            int width = gc.textExtent(cut.label()).x;
            int end = box.x + box.width - gc.textExtent(plot.acrossTitle()).x - 12;
            int left = Math.max(4, Math.min(x - width / 2, end - width));
            gc.drawText(cut.label(), left, box.y + box.height + line + 8, SWT.DRAW_TRANSPARENT);
        });
        plot.upCut().ifPresent(cut -> {
            int y = scales.y(cut.at());
            gc.drawLine(box.x, y, box.x + box.width, y);
            int width = gc.textExtent(cut.label()).x;
            gc.drawText(cut.label(), box.x + box.width - width - 4, y - line - 2, SWT.DRAW_TRANSPARENT);
            labels.take(new Rectangle(box.x + box.width - width - 4, y - line - 2, width, line));
        });
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    private void legend(GC gc, Rectangle room, Palette palette) {
        int x = room.x;
        int line = gc.getFontMetrics().getHeight();
        for (Kind kind : plot.kinds()) {
            gc.setForeground(palette.ink());
            kind.shape().draw(gc, x + HALF, room.y + line / 2, HALF - 1, palette.series(kind.series()));
            gc.setForeground(palette.quiet());
            gc.drawText(kind.name(), x + HALF * 2 + 6, room.y, SWT.DRAW_TRANSPARENT);
            x += HALF * 2 + 24 + gc.textExtent(kind.name()).x;
        }
    }

    private int legendWidth(GC gc) {
        return plot.kinds().stream()
                .mapToInt(kind -> HALF * 2 + 24 + gc.textExtent(kind.name()).x)
                .sum();
    }

    private void dots(GC gc, Palette palette, LabelPlaces labels) {
        Comparator<Dot> pickedFirst = Comparator.comparing(dot -> !isPicked(dot.id()));
        List<Dot> order = plot.dots().stream()
                .sorted(pickedFirst.thenComparing(Comparator.comparing(Dot::up).reversed()))
                .toList();
        for (Dot dot : order) {
            Rectangle place = places().get(dot.id());
            gc.setForeground(palette.ink());
            dot.kind()
                    .shape()
                    .draw(
                            gc,
                            place.x + HALF,
                            place.y + HALF,
                            HALF,
                            palette.series(dot.kind().series()));
            if (isPicked(dot.id())) {
                gc.setLineWidth(2);
                gc.setForeground(palette.accent());
                gc.drawOval(place.x - 5, place.y - 5, place.width + 9, place.height + 9);
            }
            write(gc, dot, place, labels, palette);
        }
    }

    /** The whole name where there is room for it, else its beginning. */
    private void write(GC gc, Dot dot, Rectangle place, LabelPlaces labels, Palette palette) {
        Point size = gc.textExtent(dot.label());
        labels.put(place, size)
                .or(() -> labels.put(place, new Point(Math.min(size.x, Math.max(SHORT, size.x / 2)), size.y)))
                .ifPresent(room -> label(gc, dot, place, room, palette));
    }

    private void label(GC gc, Dot dot, Rectangle mark, Rectangle room, Palette palette) {
        boolean far = room.y > mark.y + mark.height + room.height / 2 || room.y + room.height * 3 / 2 < mark.y;
        if (far) {
            gc.setForeground(palette.line());
            int end = room.y > mark.y ? room.y : room.y + room.height;
            int middle = Math.max(room.x, Math.min(room.x + room.width, mark.x + HALF));
            gc.drawLine(mark.x + HALF, room.y > mark.y ? mark.y + mark.height + 1 : mark.y - 1, middle, end);
        }
        gc.setForeground(isPicked(dot.id()) ? palette.accent() : palette.ink());
        text(gc, dot.label(), room.x, room.y, room.width);
    }

    @Override
    protected Optional<String> next(Event event) {
        int[] to = direction(event.keyCode);
        Optional<Rectangle> from = picked().map(places()::get);
        if (from.isEmpty()) {
            return plot.dots().stream().findFirst().map(Dot::id);
        }
        Rectangle start = from.get();
        return plot.dots().stream()
                .map(Dot::id)
                .filter(id -> !isPicked(id) && ahead(start, places().get(id), to) > 0)
                .min(Comparator.comparing(id -> effort(start, places().get(id), to)));
    }

    private static int ahead(Rectangle from, Rectangle other, int[] to) {
        return (other.x - from.x) * to[0] + (other.y - from.y) * to[1];
    }

    private static int effort(Rectangle from, Rectangle other, int[] to) {
        int aside = Math.abs((other.x - from.x) * to[1]) + Math.abs((other.y - from.y) * to[0]);
        return ahead(from, other, to) + aside * 2;
    }

    private Rectangle mark(PlotArea scales, Dot dot) {
        return new Rectangle(scales.x(dot.across()) - HALF, scales.y(dot.up()) - HALF, HALF * 2 + 1, HALF * 2 + 1);
    }

    private Optional<Dot> dot(String id) {
        return plot.dots().stream().filter(dot -> dot.id().equals(id)).findFirst();
    }

    private static String words(Dot dot) {
        return dot.label() + ", " + dot.kind().name() + ": " + dot.text();
    }
}
