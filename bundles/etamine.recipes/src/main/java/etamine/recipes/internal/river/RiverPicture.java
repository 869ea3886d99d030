package etamine.recipes.internal.river;

import etamine.base.flow.Flow;
import etamine.base.flow.FlowLayout;
import etamine.base.flow.FlowPlan;
import etamine.base.flow.FlowSpace;
import etamine.documents.Drawing;
import etamine.documents.Drawing.Close;
import etamine.documents.Drawing.Curve;
import etamine.documents.Drawing.Move;
import etamine.documents.Drawing.Paint;
import etamine.documents.Drawing.Straight;
import etamine.documents.Ink;
import etamine.measures.Quantity;
import etamine.recipes.River;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Draws a river as shapes for paper. Steps of the plan are tenths of a point, or less where the sheet is too small. */
final class RiverPicture {
    private static final double STEP = 10.0;
    private static final int TYPE = 80;
    private static final int LINE = 96;
    private static final int LETTER = 50;
    private static final int LETTERS = 17;
    private static final int MOST = 12;
    private static final double TALLEST = 4000;
    private static final double WIDEST = 7600;
    private static final FlowSpace SPACE = new FlowSpace(7600, 3400, 40, 300);

    private final River river;
    private final Function<Quantity, String> texts;
    private final Map<String, List<String>> labels = new HashMap<>();
    private final List<Drawing.Shape> shapes = new ArrayList<>();
    private double step = STEP;

    RiverPicture(River river, Function<Quantity, String> texts) {
        this.river = river.gathered(MOST);
        this.texts = texts;
    }

    Drawing drawing() {
        List<Flow.Node> nodes = river.nodes().stream().map(this::node).toList();
        List<Flow.Link> links = river.links().stream()
                .map(link -> new Flow.Link(link.from(), link.to(), river.part(link.amount())))
                .toList();
        FlowPlan plan = FlowLayout.plan(new Flow(nodes, links), SPACE);
        step = STEP * Math.max(1, Math.max(plan.height() / TALLEST, plan.width() / WIDEST));
        for (int i = 0; i < links.size(); i++) {
            River.Kind end = kind(links.get(i).to());
            boolean leaves = end.end() && end != River.Kind.SERVED;
            ribbon(
                    plan.ribbons().get(i),
                    pale(ink(leaves ? end : kind(links.get(i).from()))));
        }
        plan.places().forEach(this::place);
        String title = "What flows into " + river.name() + " and what falls away";
        return new Drawing(title, plan.width() / step, plan.height() / step, shapes);
    }

    private River.Kind kind(String node) {
        return river.node(node).orElseThrow().kind();
    }

    private Flow.Node node(River.Node node) {
        List<String> lines = lines(node);
        labels.put(node.id(), lines);
        int width = lines.stream().mapToInt(String::length).max().orElse(0) * LETTER + LINE;
        boolean falls = node.kind().end() && node.kind() != River.Kind.SERVED;
        return new Flow.Node(
                node.id(), node.layer(), river.part(node.amount()), falls, width, lines.size() * LINE + 20);
    }

    private List<String> lines(River.Node node) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : goal(node).split("\\s+")) {
            if (!line.isEmpty() && line.length() + word.length() >= LETTERS) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        lines.add(texts.apply(node.amount()));
        return lines;
    }

    /** What a node is called where it is arrived at: what falls away says so. */
    static String goal(River.Node node) {
        boolean leaves = node.kind().end()
                && node.kind() != River.Kind.SERVED
                && !node.subject().isEmpty();
        return leaves ? node.name() + ", " + node.kind().inWords() : node.name();
    }

    private void ribbon(FlowPlan.Ribbon ribbon, Ink ink) {
        double thickness = ribbon.thickness() / step;
        for (FlowPlan.Reach reach : ribbon.reaches()) {
            double left = reach.fromX() / step;
            double right = reach.toX() / step;
            double middle = (left + right) / 2;
            double from = reach.fromY() / step;
            double to = reach.toY() / step;
            shapes.add(new Drawing.Outline(
                    List.of(
                            new Move(left, from),
                            new Curve(middle, from, middle, to, right, to),
                            new Straight(right, to + thickness),
                            new Curve(middle, to + thickness, middle, from + thickness, left, from + thickness),
                            new Close()),
                    Paint.filled(ink)));
        }
    }

    private void place(FlowPlan.Place place) {
        Ink ink = ink(kind(place.id()));
        double x = place.x() / step;
        double y = place.bandY() / step;
        double band = place.band() / step;
        shapes.add(new Drawing.Box(x, y, place.width() / step, band, Paint.filled(pale(ink))));
        shapes.add(new Drawing.Box(x, y, 24 / step, band, Paint.filled(ink)));
        double base = (place.labelY() + TYPE) / step;
        for (String line : labels.get(place.id())) {
            shapes.add(new Drawing.Label(x + 45 / step, base, line, Drawing.Type.of(TYPE / step)));
            base += LINE / step;
        }
    }

    private static Ink ink(River.Kind kind) {
        return switch (kind) {
            case BOUGHT -> Ink.series(4);
            case WATER, UNWRITTEN -> Ink.series(0);
            case MADE -> Ink.series(2);
            case SERVED -> Ink.series(1);
            case TRIM, LOST, SPILT, LEFT_OVER -> Ink.series(5);
            case ELSEWHERE -> Ink.series(6);
        };
    }

    /** The same colour faint enough for text to be read on it. */
    private static Ink pale(Ink ink) {
        return new Ink(faint(ink.red()) << 16 | faint(ink.green()) << 8 | faint(ink.blue()));
    }

    private static int faint(int part) {
        return 255 - (255 - part) * 2 / 5;
    }
}
