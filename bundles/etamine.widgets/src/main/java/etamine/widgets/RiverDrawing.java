package etamine.widgets;

import etamine.base.flow.FlowPlan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/**
 * A river: what flows from the left to the right, in ribbons as thick as their amounts, with what is lost falling to the
 * bottom. Scrolls where the labels need more room than there is. Left and right follow the thickest ribbon, up and down
 * go to the neighbours.
 */
public final class RiverDrawing extends PickDrawing {
    /** Beyond this many columns a picture says nothing. */
    private static final int MOST_COLUMNS = 60;

    private final ScrolledComposite scroller;
    private RiverShape shape = RiverShape.EMPTY;
    private Optional<RiverPaint> paint = Optional.empty();
    private String title = "";
    private Optional<String> pointed = Optional.empty();

    /** What part a place plays; each has a colour, and a word in its label. */
    public enum Role {
        /** Comes in from outside. */
        SOURCE,
        /** Water and the like that comes in without being bought. */
        WATER,
        /** Is worked on. */
        WORK,
        /** Is what the river is for. */
        GOAL,
        /** Falls away. */
        LOSS,
        /** Flows off to something else. */
        ELSEWHERE
    }

    /**
     * A place that the flow passes.
     *
     * @param id its identifier
     * @param column its column; 0 is leftmost
     * @param amount how much flows through it, on any scale that all share
     * @param role what part it plays
     * @param label what it is
     * @param figure its amount in words
     */
    public record Pool(String id, int column, long amount, Role role, String label, String figure) {

        String spoken() {
            return label + ", " + figure;
        }
    }

    /**
     * Some of the flow.
     *
     * @param from the pool it leaves
     * @param to the pool it comes to, in a column further right
     * @param amount how much, on the scale of the pools
     */
    public record Stream(String from, String to, long amount) {}

    /** An empty river with a scroller of its own round it. */
    public static RiverDrawing in(Composite parent) {
        return new RiverDrawing(new ScrolledComposite(parent, SWT.H_SCROLL | SWT.V_SCROLL));
    }

    private RiverDrawing(ScrolledComposite scroller) {
        super(scroller);
        this.scroller = scroller;
        scroller.setContent(this);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        scroller.setBackground(Palette.of(this).paper());
        scroller.addListener(SWT.Resize, event -> fit());
        addListener(SWT.MouseMove, event -> point(at(event)));
        addListener(SWT.MouseExit, event -> point(Optional.empty()));
    }

    /** The control to lay out: the river with its scroller. */
    public Control control() {
        return scroller;
    }

    /** Shows this flow; what is picked stays picked while it is there. */
    public void show(String newTitle, List<Pool> pools, List<Stream> streams) {
        title = newTitle;
        shape = new RiverShape(pools, streams);
        pointed = Optional.empty();
        offer(pools.stream().map(Pool::id).toList());
        fit();
    }

    /** Calls back with the id of a pool that a person picks. */
    public RiverDrawing onPick(Consumer<String> listener) {
        listen(listener);
        return this;
    }

    @Override
    public String description() {
        return picked().flatMap(shape::pool)
                .map(Pool::spoken)
                .orElseGet(() ->
                        title + ". " + shape.pools().stream().map(Pool::spoken).collect(Collectors.joining("; ")));
    }

    private void fit() {
        Rectangle area = scroller.getClientArea();
        if (area.width <= 0 || area.height <= 0) {
            return;
        }
        paint = Optional.empty();
        if (shape.pools().isEmpty() || shape.columns() > MOST_COLUMNS) {
            scroller.setMinSize(0, 0);
        } else {
            GC gc = new GC(this);
            try {
                gc.setFont(getFont());
                RiverPaint laid = RiverPaint.of(gc, shape, new Point(area.width, area.height));
                paint = Optional.of(laid);
                scroller.setMinSize(laid.size());
                laid.plan().places().forEach(place -> places().put(place.id(), laid.box(place)));
            } finally {
                gc.dispose();
            }
        }
        redraw();
    }

    private void point(Optional<String> id) {
        if (!id.equals(pointed)) {
            pointed = id;
            setToolTipText(id.flatMap(shape::pool).map(Pool::spoken).orElse(null));
            redraw();
        }
    }

    @Override
    protected void draw(GC gc, Rectangle area, Palette palette) {
        if (paint.isPresent()) {
            paint.get().draw(gc, palette, picked().or(() -> pointed));
        } else if (!shape.pools().isEmpty()) {
            int margin = gc.getFontMetrics().getHeight();
            text(gc, "Too many steps deep to draw; the table has all of it.", margin, margin, area.width - margin);
        }
    }

    @Override
    protected Optional<String> next(Event event) {
        int[] to = direction(event.keyCode);
        Optional<Pool> at = picked().flatMap(shape::pool);
        if (at.isEmpty()) {
            return shape.pools().stream().findFirst().map(Pool::id);
        }
        Optional<String> next = to[0] != 0 ? shape.thickest(at.get().id(), to[0] > 0) : neighbour(at.get(), to[1]);
        next.ifPresent(this::reveal);
        return next;
    }

    private Optional<String> neighbour(Pool at, int step) {
        Map<String, Rectangle> boxes = places();
        List<String> column = shape.pools().stream()
                .filter(pool -> pool.column() == at.column())
                .map(Pool::id)
                .sorted((one, other) -> Integer.compare(boxes.get(one).y, boxes.get(other).y))
                .toList();
        int next = column.indexOf(at.id()) + step;
        return next >= 0 && next < column.size() ? Optional.of(column.get(next)) : Optional.empty();
    }

    private void reveal(String id) {
        Rectangle box = places().get(id);
        Point origin = scroller.getOrigin();
        Rectangle seen = scroller.getClientArea();
        boolean inside = box.x >= origin.x
                && box.y >= origin.y
                && box.x + box.width <= origin.x + seen.width
                && box.y + box.height <= origin.y + seen.height;
        if (!inside) {
            scroller.setOrigin(Math.max(0, box.x - seen.width / 3), Math.max(0, box.y - seen.height / 3));
        }
    }

    /** The plan that is drawn, once there is room. */
    Optional<FlowPlan> plan() {
        return paint.map(RiverPaint::plan);
    }
}
