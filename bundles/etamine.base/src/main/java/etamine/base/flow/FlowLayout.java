package etamine.base.flow;

import etamine.base.Exemption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays a flow out in columns: thickness is amount on one scale throughout, columns are ordered so that ribbons cross
 * little, and a link that spans columns keeps a passage of its own through each.
 */
@Exemption(
        rule = "exported-types",
        because = "pure placing of values, needed alike by the window and by the modules that make paper")
public final class FlowLayout {
    private static final int SWEEPS = 12;
    /** Where labels leave no room, the thickest node still has this share of the height. */
    private static final double LEAST = 0.22;

    private final FlowSpace space;
    private final Map<String, FlowCell> cells = new HashMap<>();
    private final List<List<FlowCell>> columns = new ArrayList<>();
    private final List<List<FlowCell.Strand>> ways = new ArrayList<>();
    private double perAmount;
    private int height;

    private FlowLayout(FlowSpace space) {
        this.space = space;
    }

    /** The plan of a flow for that room. */
    public static FlowPlan plan(Flow flow, FlowSpace space) {
        FlowLayout layout = new FlowLayout(space);
        flow.nodes().forEach(node -> layout.place(new FlowCell(node)));
        flow.links().forEach(layout::thread);
        layout.order();
        layout.scale();
        layout.stack();
        return layout.plan(flow);
    }

    private void place(FlowCell cell) {
        while (columns.size() <= cell.layer) {
            columns.add(new ArrayList<>());
        }
        columns.get(cell.layer).add(cell);
        if (!cell.id.isEmpty()) {
            cells.put(cell.id, cell);
        }
    }

    private void thread(Flow.Link link) {
        FlowCell from = cells.get(link.from());
        FlowCell to = cells.get(link.to());
        if (from == null || to == null || from.layer >= to.layer) {
            throw new IllegalArgumentException("A link leads from a node to one of a higher layer: " + link);
        }
        List<FlowCell.Strand> way = new ArrayList<>();
        FlowCell at = from;
        for (int layer = from.layer + 1; layer < to.layer; layer++) {
            FlowCell passage = new FlowCell(layer, link.amount(), to.falls);
            place(passage);
            way.add(new FlowCell.Strand(at, passage, link.amount()));
            at = passage;
        }
        way.add(new FlowCell.Strand(at, to, link.amount()));
        ways.add(way);
    }

    /** Sorts each column by where its neighbours lie, from both sides in turn, on a provisional scale. */
    private void order() {
        columns.forEach(column -> column.sort(Comparator.comparing(cell -> cell.falls)));
        long most = columns.stream().mapToLong(FlowLayout::sum).max().orElse(1);
        columns.forEach(column -> {
            column.forEach(cell -> cell.scale((double) space.height() / Math.max(1, most)));
            pile(column);
        });
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            boolean fromLeft = sweep % 2 == 0;
            for (int i = 0; i < columns.size(); i++) {
                List<FlowCell> column = columns.get(fromLeft ? i : columns.size() - 1 - i);
                Map<FlowCell, Double> wishes = new HashMap<>();
                column.forEach(cell -> wishes.put(cell, cell.wished(fromLeft)));
                column.sort(Comparator.comparing((FlowCell cell) -> cell.falls).thenComparing(wishes::get));
                pile(column);
            }
        }
    }

    private static long sum(List<FlowCell> column) {
        return column.stream().mapToLong(cell -> cell.amount).sum();
    }

    private void pile(List<FlowCell> column) {
        int y = 0;
        for (FlowCell cell : column) {
            cell.y = y;
            y += cell.height + space.gap();
        }
    }

    /** The largest scale at which every column fits; where labels leave no room, the height grows instead. */
    private void scale() {
        long thickest =
                cells.values().stream().mapToLong(cell -> cell.amount).max().orElse(1);
        double most = (double) space.height() / Math.max(1, thickest);
        double least = most * LEAST;
        double fits = 0;
        double fails = most;
        for (int i = 0; i < 40; i++) {
            double tried = (fits + fails) / 2;
            if (tallest(tried) <= space.height()) {
                fits = tried;
            } else {
                fails = tried;
            }
        }
        perAmount = Math.max(fits, least);
        height = Math.max(space.height(), tallest(perAmount));
    }

    private int tallest(double scale) {
        int tallest = 0;
        for (List<FlowCell> column : columns) {
            column.forEach(cell -> cell.scale(scale));
            int sum = (column.size() - 1) * space.gap();
            for (FlowCell cell : column) {
                sum += cell.height;
            }
            tallest = Math.max(tallest, sum);
        }
        return tallest;
    }

    /** Moves cells towards their neighbours as far as those above and below leave room. */
    private void stack() {
        columns.forEach(column -> {
            column.forEach(cell -> cell.scale(perAmount));
            pile(column);
        });
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            boolean fromLeft = sweep % 2 == 0;
            for (int i = 0; i < columns.size(); i++) {
                settle(columns.get(fromLeft ? i : columns.size() - 1 - i), fromLeft);
            }
        }
        columns.forEach(column -> column.forEach(cell -> cell.spread(perAmount)));
    }

    private void settle(List<FlowCell> column, boolean fromLeft) {
        int top = 0;
        for (FlowCell cell : column) {
            int wished = (int) Math.round(cell.wished(fromLeft)) - (cell.middle() - cell.y);
            cell.y = Math.max(top, wished);
            top = cell.y + cell.height + space.gap();
        }
        int bottom = height;
        for (int i = column.size() - 1; i >= 0; i--) {
            FlowCell cell = column.get(i);
            cell.y = Math.min(cell.y, bottom - cell.height);
            bottom = cell.y - space.gap();
        }
    }

    private FlowPlan plan(Flow flow) {
        int[] left = new int[columns.size()];
        int[] width = new int[columns.size()];
        int labels = 0;
        for (int i = 0; i < width.length; i++) {
            width[i] = columns.get(i).stream()
                    .mapToInt(cell -> cell.labelWidth)
                    .max()
                    .orElse(0);
            labels += width[i];
        }
        int between = Math.max(1, width.length - 1);
        int reach = Math.max(space.reach(), (space.width() - labels) / between);
        for (int i = 1; i < width.length; i++) {
            left[i] = left[i - 1] + width[i - 1] + reach;
        }
        int whole = width.length == 0 ? 0 : left[width.length - 1] + width[width.length - 1];
        List<FlowPlan.Place> places = flow.nodes().stream()
                .map(node -> place(cells.get(node.id()), left[node.layer()], width[node.layer()]))
                .toList();
        List<FlowPlan.Ribbon> ribbons =
                ways.stream().map(way -> ribbon(way, left, width)).toList();
        return new FlowPlan(Math.max(whole, space.width()), height, places, ribbons);
    }

    private static FlowPlan.Place place(FlowCell cell, int x, int width) {
        int bandY = cell.bandY();
        boolean on = cell.band >= cell.labelHeight;
        int labelY = on ? bandY + (cell.band - cell.labelHeight) / 2 : cell.y;
        return new FlowPlan.Place(cell.id, x, cell.y, width, cell.height, bandY, cell.band, labelY);
    }

    private static FlowPlan.Ribbon ribbon(List<FlowCell.Strand> way, int[] left, int[] width) {
        List<FlowPlan.Reach> reaches = new ArrayList<>();
        for (FlowCell.Strand strand : way) {
            int fromX = left[strand.from.layer] + width[strand.from.layer];
            int toX = left[strand.to.layer];
            if (strand.from.id.isEmpty()) {
                int y = strand.fromY;
                reaches.add(new FlowPlan.Reach(left[strand.from.layer], y, fromX, y));
            }
            reaches.add(new FlowPlan.Reach(fromX, strand.fromY, toX, strand.toY));
        }
        return new FlowPlan.Ribbon(way.get(0).thickness, reaches);
    }
}
