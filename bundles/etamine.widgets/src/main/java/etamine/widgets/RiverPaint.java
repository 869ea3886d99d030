package etamine.widgets;

import etamine.base.flow.Flow;
import etamine.base.flow.FlowLayout;
import etamine.base.flow.FlowPlan;
import etamine.base.flow.FlowSpace;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/** A river laid out for one size and font, and how it is drawn. Everything is measured in the font's own height. */
final class RiverPaint {
    private static final int LABEL_LETTERS = 17;
    private static final int FAINT = 70;
    private static final int PLAIN = 105;
    private static final int STRONG = 190;

    private final RiverShape shape;
    private final Map<String, List<String>> labels;
    private final FlowPlan plan;
    private final int line;

    private RiverPaint(RiverShape shape, Map<String, List<String>> labels, FlowPlan plan, int line) {
        this.shape = shape;
        this.labels = labels;
        this.plan = plan;
        this.line = line;
    }

    static RiverPaint of(GC gc, RiverShape shape, Point room) {
        int line = gc.getFontMetrics().getHeight();
        int margin = line / 2;
        int widest = gc.textExtent("n").x * LABEL_LETTERS;
        Map<String, List<String>> labels = new HashMap<>();
        List<Flow.Node> nodes = new ArrayList<>();
        for (RiverDrawing.Pool pool : shape.pools()) {
            List<String> lines = lines(gc, pool, widest);
            labels.put(pool.id(), lines);
            int width =
                    lines.stream().mapToInt(text -> gc.textExtent(text).x).max().orElse(0) + line;
            boolean falls = pool.role() == RiverDrawing.Role.LOSS || pool.role() == RiverDrawing.Role.ELSEWHERE;
            nodes.add(new Flow.Node(pool.id(), pool.column(), pool.amount(), falls, width, lines.size() * line + 2));
        }
        List<Flow.Link> links = shape.streams().stream()
                .map(stream -> new Flow.Link(stream.from(), stream.to(), stream.amount()))
                .toList();
        FlowSpace space = new FlowSpace(room.x - margin * 2, room.y - margin * 2, line / 2 + 2, line * 3);
        return new RiverPaint(shape, labels, FlowLayout.plan(new Flow(nodes, links), space), line);
    }

    /** The label in lines that fit, with the figure on the last; a word longer than a line is the line's width. */
    private static List<String> lines(GC gc, RiverDrawing.Pool pool, int widest) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : pool.label().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && gc.textExtent(longer).x > widest) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        lines.add(pool.figure());
        return lines;
    }

    FlowPlan plan() {
        return plan;
    }

    Point size() {
        return new Point(plan.width() + line, plan.height() + line);
    }

    Rectangle box(FlowPlan.Place place) {
        return new Rectangle(place.x() + line / 2, place.y() + line / 2, place.width(), place.height());
    }

    void draw(GC gc, Palette palette, Optional<String> lit) {
        for (int i = 0; i < plan.ribbons().size(); i++) {
            RiverDrawing.Stream stream = shape.streams().get(i);
            boolean strong = lit.filter(id -> id.equals(stream.from()) || id.equals(stream.to()))
                    .isPresent();
            gc.setAlpha(strong ? STRONG : lit.isPresent() ? FAINT : PLAIN);
            gc.setBackground(color(palette, ribbonRole(stream)));
            drawRibbon(gc, plan.ribbons().get(i));
        }
        gc.setAlpha(255);
        plan.places().forEach(place -> drawPool(gc, palette, place, lit));
    }

    private RiverDrawing.Role ribbonRole(RiverDrawing.Stream stream) {
        RiverDrawing.Role end = shape.role(stream.to());
        return end == RiverDrawing.Role.LOSS || end == RiverDrawing.Role.ELSEWHERE ? end : shape.role(stream.from());
    }

    private void drawRibbon(GC gc, FlowPlan.Ribbon ribbon) {
        Path path = new Path(gc.getDevice());
        try {
            for (FlowPlan.Reach reach : ribbon.reaches()) {
                trace(path, reach, ribbon.thickness());
            }
            gc.fillPath(path);
        } finally {
            path.dispose();
        }
    }

    private void trace(Path path, FlowPlan.Reach reach, int thickness) {
        float off = line / 2f;
        float left = reach.fromX() + off;
        float right = reach.toX() + off;
        float middle = (left + right) / 2;
        float from = reach.fromY() + off;
        float to = reach.toY() + off;
        path.moveTo(left, from);
        path.cubicTo(middle, from, middle, to, right, to);
        path.lineTo(right, to + thickness);
        path.cubicTo(middle, to + thickness, middle, from + thickness, left, from + thickness);
        path.close();
    }

    private void drawPool(GC gc, Palette palette, FlowPlan.Place place, Optional<String> lit) {
        Rectangle box = box(place);
        int bandY = place.bandY() + line / 2;
        Color color = color(palette, shape.role(place.id()));
        gc.setBackground(color);
        gc.setAlpha(lit.filter(place.id()::equals).isPresent() ? STRONG : PLAIN);
        gc.fillRectangle(box.x, bandY, box.width, place.band());
        gc.setAlpha(255);
        gc.fillRectangle(box.x, bandY, Math.max(3, line / 4), place.band());
        if (shape.role(place.id()) == RiverDrawing.Role.LOSS) {
            hatch(gc, color, new Rectangle(box.x, bandY, box.width, place.band()));
        }
        gc.setForeground(palette.ink());
        int y = place.labelY() + line / 2 + 1;
        for (String text : labels.get(place.id())) {
            gc.drawText(text, box.x + line / 2, y, SWT.DRAW_TRANSPARENT);
            y += line;
        }
        if (lit.filter(place.id()::equals).isPresent()) {
            gc.setForeground(palette.accent());
            gc.setLineWidth(2);
            gc.drawRectangle(box.x - 1, box.y - 1, box.width + 2, box.height + 2);
            gc.setLineWidth(1);
        }
    }

    /** Slanted lines at the right end of what falls away, so that it is seen without its colour. */
    private void hatch(GC gc, Color color, Rectangle band) {
        Rectangle before = gc.getClipping();
        int width = Math.min(band.width / 4, line * 2);
        Rectangle end = new Rectangle(band.x + band.width - width, band.y, width, band.height);
        gc.setClipping(end.intersection(before));
        gc.setForeground(color);
        gc.setLineWidth(2);
        for (int x = end.x - end.height; x < end.x + end.width; x += line / 2) {
            gc.drawLine(x, end.y + end.height, x + end.height, end.y);
        }
        gc.setLineWidth(1);
        gc.setClipping(before);
    }

    private static Color color(Palette palette, RiverDrawing.Role role) {
        return switch (role) {
            case SOURCE -> palette.series(0);
            case WATER -> palette.series(4);
            case WORK -> palette.series(2);
            case GOAL -> palette.series(1);
            case LOSS -> palette.series(5);
            case ELSEWHERE -> palette.series(3);
        };
    }
}
