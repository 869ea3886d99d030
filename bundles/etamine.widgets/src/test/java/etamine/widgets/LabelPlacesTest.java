package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.junit.jupiter.api.Test;

class LabelPlacesTest {
    private static final Rectangle AREA = new Rectangle(0, 0, 600, 400);

    @Test
    void putsALabelRightOfItsPointWhereThereIsRoom() {
        Rectangle mark = new Rectangle(100, 100, 13, 13);
        assertThat(new LabelPlaces(AREA).put(mark, new Point(80, 16))).contains(new Rectangle(117, 98, 80, 16));
    }

    @Test
    void putsItLeftOfAPointAtTheEdge() {
        Rectangle mark = new Rectangle(580, 100, 13, 13);
        assertThat(new LabelPlaces(AREA).put(mark, new Point(80, 16)).orElseThrow().x)
                .isEqualTo(496);
    }

    @Test
    void leavesOutALabelRatherThanLayOneOnAnother() {
        LabelPlaces labels = new LabelPlaces(AREA);
        labels.take(AREA);
        assertThat(labels.put(new Rectangle(100, 100, 13, 13), new Point(80, 16)))
                .isEmpty();
    }

    @Test
    void neverLaysLabelsOnPointsOrOnEachOther() {
        Random random = new Random(4);
        for (int round = 0; round < 50; round++) {
            LabelPlaces labels = new LabelPlaces(AREA);
            List<Rectangle> all = new ArrayList<>();
            for (int at = 0; at < 20; at++) {
                all.add(new Rectangle(random.nextInt(580), random.nextInt(380), 13, 13));
            }
            all.forEach(labels::take);
            List<Rectangle> marks = List.copyOf(all);
            List<Rectangle> put = new ArrayList<>();
            marks.forEach(mark -> labels.put(mark, new Point(90, 16)).ifPresent(put::add));
            assertThat(put).hasSizeGreaterThan(14);
            assertApart(put, marks);
        }
    }

    private static void assertApart(List<Rectangle> put, List<Rectangle> marks) {
        for (int one = 0; one < put.size(); one++) {
            for (int other = one + 1; other < put.size(); other++) {
                assertThat(put.get(one).intersects(put.get(other))).isFalse();
            }
            assertThat(marks).noneMatch(put.get(one)::intersects);
        }
    }
}
