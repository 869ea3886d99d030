package etamine.recipes.ui.internal;

import java.util.ArrayList;
import java.util.List;

/** One row of a list being changed; the rest stays. */
final class Rows {
    private Rows() {}

    /** The list with an element put at a place, or behind it all when the place is past the end. */
    static <T> List<T> with(List<T> list, int row, T element) {
        List<T> changed = new ArrayList<>(list);
        if (row < changed.size()) {
            changed.set(row, element);
        } else {
            changed.add(element);
        }
        return changed;
    }

    /** The list without the element at a place. */
    static <T> List<T> without(List<T> list, int row) {
        List<T> changed = new ArrayList<>(list);
        if (row < changed.size()) {
            changed.remove(row);
        }
        return changed;
    }

    /** The list with the element at a place moved up or down by one, where there is one to change places with. */
    static <T> List<T> moved(List<T> list, int row, int by) {
        List<T> changed = new ArrayList<>(list);
        if (row >= 0 && row < changed.size() && row + by >= 0 && row + by < changed.size()) {
            changed.add(row + by, changed.remove(row));
        }
        return changed;
    }
}
