package etamine.widgets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/**
 * Finds room for labels beside points, so that no label lies on another, on a point or outside. A label for which there
 * is no room near its point gets none: the table beside a picture has every name.
 */
final class LabelPlaces {
    private static final int GAP = 4;
    private static final int RINGS = 4;
    private final Rectangle area;
    private final List<Rectangle> taken = new ArrayList<>();

    LabelPlaces(Rectangle area) {
        this.area = area;
    }

    /** Keeps labels off this place. */
    void take(Rectangle place) {
        taken.add(place);
    }

    /** A place for a label of that size near a point, the nearest first; it is taken from then on. */
    Optional<Rectangle> put(Rectangle mark, Point size) {
        for (int ring = 0; ring < RINGS; ring++) {
            for (Rectangle place : around(mark, size, GAP + ring * size.y)) {
                if (isFree(place)) {
                    taken.add(place);
                    return Optional.of(place);
                }
            }
        }
        return Optional.empty();
    }

    private static List<Rectangle> around(Rectangle mark, Point size, int gap) {
        int middle = mark.x + mark.width / 2 - size.x / 2;
        int beside = mark.y + mark.height / 2 - size.y / 2;
        int right = mark.x + mark.width + GAP;
        int left = mark.x - GAP - size.x;
        int above = mark.y - gap - size.y;
        int below = mark.y + mark.height + gap;
        List<Rectangle> places = new ArrayList<>();
        if (gap == GAP) {
            places.add(new Rectangle(right, beside, size.x, size.y));
            places.add(new Rectangle(left, beside, size.x, size.y));
        }
        for (int x : new int[] {middle, right, left}) {
            places.add(new Rectangle(x, above, size.x, size.y));
            places.add(new Rectangle(x, below, size.x, size.y));
        }
        return places;
    }

    private boolean isFree(Rectangle place) {
        boolean inside = place.x >= area.x
                && place.y >= area.y
                && place.x + place.width <= area.x + area.width
                && place.y + place.height <= area.y + area.height;
        return inside && taken.stream().noneMatch(place::intersects);
    }
}
