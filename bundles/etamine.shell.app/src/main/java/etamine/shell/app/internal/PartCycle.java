package etamine.shell.app.internal;

import java.util.List;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.jspecify.annotations.Nullable;

/** The parts of the window in the order F6 visits them. */
record PartCycle(List<Composite> parts) {

    static PartCycle of(List<Composite> parts) {
        return new PartCycle(parts);
    }

    /** Puts the keyboard in the next part that takes it. */
    void move(@Nullable Control focus, boolean forward) {
        int at = indexOf(focus);
        for (int step = 1; step <= parts.size(); step++) {
            int next = Math.floorMod(at + (forward ? step : -step), parts.size());
            Composite part = parts.get(next);
            if (part.isVisible() && part.setFocus()) {
                return;
            }
        }
    }

    private int indexOf(@Nullable Control focus) {
        int found = -1;
        for (int at = 0; at < parts.size(); at++) {
            if (holds(parts.get(at), focus) && (found < 0 || holds(parts.get(found), parts.get(at)))) {
                found = at;
            }
        }
        return found;
    }

    private static boolean holds(Composite part, @Nullable Control control) {
        for (Control at = control; at != null; at = at.getParent()) {
            if (at == part) {
                return true;
            }
        }
        return false;
    }
}
