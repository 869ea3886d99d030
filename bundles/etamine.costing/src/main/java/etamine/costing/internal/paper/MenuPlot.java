package etamine.costing.internal.paper;

import etamine.costing.MenuReport;
import etamine.documents.Align;
import etamine.documents.Drawing;
import etamine.documents.Ink;
import java.util.ArrayList;
import java.util.List;

/**
 * Items by popularity, to the right, and contribution, upwards; the two lines part the four classes. Each dot has the
 * number of its row in the table below.
 *
 * @param group the items
 */
record MenuPlot(MenuReport.Group group) {
    private static final double WIDTH = 520;
    private static final double HEIGHT = 240;
    private static final double EDGE = 24;
    private static final double TYPE = 8;
    private static final double ROOM = 1.12;

    Drawing drawing() {
        double most = Math.max(
                group.popularityCutPercent().doubleValue(),
                group.items().stream()
                        .mapToDouble(item -> item.sharePercent().doubleValue())
                        .max()
                        .orElse(1));
        double average = group.averageContribution().amount().doubleValue();
        double top = group.items().stream().mapToDouble(MenuPlot::leaves).max().orElse(1);
        double low = Math.min(
                0, group.items().stream().mapToDouble(MenuPlot::leaves).min().orElse(0));
        Scale across = new Scale(0, most * ROOM, EDGE, WIDTH - EDGE);
        Scale up = new Scale(low, Math.max(top, average) * ROOM + 0.01, HEIGHT - EDGE, EDGE);
        List<Drawing.Shape> shapes = new ArrayList<>();
        frame(shapes, across.at(group.popularityCutPercent().doubleValue()), up.at(average));
        int place = 0;
        for (MenuReport.Item item : group.items()) {
            place++;
            double x = across.at(item.sharePercent().doubleValue());
            double y = up.at(leaves(item));
            shapes.add(new Drawing.Dot(
                    x, y, 3.5, Drawing.Paint.edged(Ink.series(item.standing().ordinal()), Ink.BLACK)));
            shapes.add(new Drawing.Label(x + 6, y + 3, String.valueOf(place), Drawing.Type.of(TYPE)));
        }
        return new Drawing("Popularity and contribution of " + group.name(), WIDTH, HEIGHT, shapes);
    }

    private static double leaves(MenuReport.Item item) {
        return item.contribution().amount().doubleValue();
    }

    private void frame(List<Drawing.Shape> shapes, double cut, double average) {
        Drawing.Paint thin = Drawing.Paint.outlined(Ink.GREY, 0.5);
        shapes.add(new Drawing.Box(EDGE, EDGE, WIDTH - 2 * EDGE, HEIGHT - 2 * EDGE, thin));
        shapes.add(new Drawing.Line(cut, EDGE, cut, HEIGHT - EDGE, thin));
        shapes.add(new Drawing.Line(EDGE, average, WIDTH - EDGE, average, thin));
        Drawing.Type word = Drawing.Type.of(TYPE).in(Ink.GREY);
        Drawing.Type right = word.at(Align.RIGHT);
        shapes.add(new Drawing.Label(EDGE + 3, EDGE + TYPE + 2, "puzzle", word));
        shapes.add(new Drawing.Label(WIDTH - EDGE - 3, EDGE + TYPE + 2, "star", right));
        shapes.add(new Drawing.Label(EDGE + 3, HEIGHT - EDGE - 3, "dog", word));
        shapes.add(new Drawing.Label(WIDTH - EDGE - 3, HEIGHT - EDGE - 3, "plowhorse", right));
        shapes.add(new Drawing.Label(WIDTH - EDGE, HEIGHT - TYPE, "more popular", right));
        shapes.add(new Drawing.Label(EDGE, EDGE - TYPE, "leaves more", word));
    }

    /** A range of values on a range of points. */
    private record Scale(double from, double to, double first, double last) {
        double at(double value) {
            return first + (value - from) / (to - from) * (last - first);
        }
    }
}
