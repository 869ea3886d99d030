package etamine.widgets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/** A picture whose parts can be picked with a click or the arrow keys. Picking is told to screen readers. */
public abstract class PickDrawing extends Drawing {
    private static final int REACH = 14;
    private final Map<String, Rectangle> places = new LinkedHashMap<>();
    private final List<Consumer<String>> listeners = new ArrayList<>();
    private Optional<String> picked = Optional.empty();

    /** An empty picture that takes the keyboard. */
    protected PickDrawing(Composite parent) {
        super(parent);
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.MouseDown, this::click);
        addListener(
                SWT.MouseMove,
                event -> at(event)
                        .ifPresentOrElse(
                                id -> setCursor(getDisplay().getSystemCursor(SWT.CURSOR_HAND)), () -> setCursor(null)));
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Traverse, PickDrawing::traverse);
        addListener(SWT.Paint, event -> ring(event.gc));
    }

    /** What is picked. */
    public Optional<String> picked() {
        return picked;
    }

    /** Picks a part without telling the listeners; an unknown id picks nothing. */
    public void pick(String id) {
        picked = Optional.of(id).filter(places::containsKey);
        redraw();
    }

    /** The part that an arrow key leads to. */
    protected abstract Optional<String> next(Event event);

    /** Where each part was drawn; drawing fills it. */
    protected final Map<String, Rectangle> places() {
        return places;
    }

    /** Makes these the parts; what is picked stays if it is among them. */
    protected final void offer(List<String> ids) {
        places.clear();
        ids.forEach(id -> places.put(id, new Rectangle(0, 0, 0, 0)));
        picked = picked.filter(places::containsKey);
    }

    /** Whether that part is picked. */
    protected final boolean isPicked(String id) {
        return picked.filter(id::equals).isPresent();
    }

    /** Calls back when a person picks a part. */
    protected final void listen(Consumer<String> listener) {
        listeners.add(listener);
    }

    /** A step right and down for an arrow key. */
    protected static int[] direction(int keyCode) {
        return switch (keyCode) {
            case SWT.ARROW_LEFT -> new int[] {-1, 0};
            case SWT.ARROW_RIGHT -> new int[] {1, 0};
            case SWT.ARROW_UP -> new int[] {0, -1};
            case SWT.ARROW_DOWN -> new int[] {0, 1};
            default -> new int[] {0, 0};
        };
    }

    private void key(Event event) {
        int[] to = direction(event.keyCode);
        if (to[0] != 0 || to[1] != 0) {
            next(event).ifPresent(this::choose);
            event.doit = false;
        }
    }

    private void click(Event event) {
        forceFocus();
        at(event).ifPresent(this::choose);
    }

    private void choose(String id) {
        picked = Optional.of(id);
        redraw();
        getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
        List.copyOf(listeners).forEach(listener -> listener.accept(id));
    }

    /** The part under the pointer, else the one whose middle is nearest to it, within reach. */
    protected final Optional<String> at(Event event) {
        return places.entrySet().stream()
                .filter(place -> place.getValue().contains(event.x, event.y))
                .map(Map.Entry::getKey)
                .findFirst()
                .or(() -> near(event));
    }

    private Optional<String> near(Event event) {
        return places.entrySet().stream()
                .filter(place -> distance(place.getValue(), event) < (long) REACH * REACH)
                .min(Comparator.comparingLong(place -> distance(place.getValue(), event)))
                .map(Map.Entry::getKey);
    }

    private static long distance(Rectangle box, Event event) {
        long right = box.x + box.width / 2L - event.x;
        long down = box.y + box.height / 2L - event.y;
        return right * right + down * down;
    }

    private void ring(GC gc) {
        if (isFocusControl()) {
            Rectangle area = getClientArea();
            gc.setForeground(Palette.of(this).accent());
            gc.setLineWidth(1);
            gc.drawRectangle(0, 0, area.width - 1, area.height - 1);
        }
    }

    private static void traverse(Event event) {
        event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS
                || event.detail == SWT.TRAVERSE_ESCAPE;
    }
}
