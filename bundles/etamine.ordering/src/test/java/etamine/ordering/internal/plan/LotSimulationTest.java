package etamine.ordering.internal.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import etamine.ordering.internal.plan.Scene.Goods;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LotSimulationTest {

    @Test
    void usesWhatExpiresFirstAndThrowsAwayWhatIsLeftInTheEvening() {
        // By hand: day 0 takes 2 of the lot that ends on day 1, day 1 takes 2 more and bins its last one;
        // day 2 and 3 take 2 each of the other 3, so day 3 misses 1.
        ItemModel item = new Goods("cream")
                .use(2, 2, 2, 2)
                .onHand(3, Batch.KEEPS)
                .onHand(5, 1)
                .model(1);

        Course course = LotSimulation.run(item, List.of());

        assertThat(pieces(course.opening(), 4)).containsExactly(8L, 6L, 3L, 1L);
        assertThat(pieces(course.closing(), 4)).containsExactly(6L, 3L, 1L, 0L);
        assertThat(pieces(course.unmet(), 4)).containsExactly(0L, 0L, 0L, 1L);
        assertThat(course.waste())
                .extracting(Course.Waste::day, Course.Waste::grains)
                .containsExactly(tuple(1, Scene.PIECE));
        assertThat(course.firstUnmet(4)).isEqualTo(3);
        assertThat(course.firstUnmet(3)).isEqualTo(-1);
    }

    @Test
    void neverUsesWhatIsPastItsLastDay() {
        ItemModel item = new Goods("cream").use(2).onHand(5, -1).model(1);

        Course course = LotSimulation.run(item, List.of());

        assertThat(course.opening()[0]).isZero();
        assertThat(course.unmet()[0]).isEqualTo(2 * Scene.PIECE);
        assertThat(course.waste()).hasSize(1);
        assertThat(course.waste().get(0).day()).isZero();
    }

    @Test
    void countsWhatIsOnOrderFromTheMorningItComes() {
        ItemModel item = new Goods("cream").use(1, 1, 1).onOrder(2, 1).model(1);

        Course course = LotSimulation.run(item, List.of());

        assertThat(pieces(course.unmet(), 3)).containsExactly(1L, 0L, 0L);
        assertThat(pieces(course.opening(), 3)).containsExactly(0L, 2L, 1L);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void agreesWithASimulationOfSinglePieces(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 100; round++) {
            ItemModel item = randomItem(random);
            Course course = LotSimulation.run(item, List.of());
            assertSameAsPieceByPiece(item, course);
            assertBalance(item, course);
        }
    }

    private static ItemModel randomItem(Random random) {
        long[] use = random.longs(12, 0, 5).toArray();
        Goods goods = new Goods("x").use(use);
        List<Batch> batches = new ArrayList<>();
        for (int i = random.nextInt(8); i >= 0; i--) {
            int arrives = random.nextInt(10) - 1;
            int last = random.nextInt(4) == 0 ? Batch.KEEPS : arrives + random.nextInt(6);
            batches.add(new Batch(arrives, random.nextInt(7) * Scene.PIECE, last, "batch " + i, Optional.empty()));
        }
        ItemModel plain = goods.model(1);
        return new ItemModel("x", plain.grain(), plain.wanted(), batches, List.of(), "");
    }

    private static void assertBalance(ItemModel item, Course course) {
        long arrived = item.batches().stream().mapToLong(Batch::grains).sum();
        long used = Arrays.stream(item.wanted().use()).sum()
                - Arrays.stream(course.unmet()).sum();
        long wasted = course.waste().stream().mapToLong(Course.Waste::grains).sum();
        assertThat(used + wasted + course.closing()[course.closing().length - 1])
                .isEqualTo(arrived);
        assertThat(Arrays.stream(course.closing()).min().orElseThrow()).isNotNegative();
        assertThat(Arrays.stream(course.unmet()).min().orElseThrow()).isNotNegative();
    }

    /** Every piece is an object of its own: no lots, no sums. */
    private static void assertSameAsPieceByPiece(ItemModel item, Course course) {
        List<Integer> shelf = new ArrayList<>();
        for (int day = 0; day < item.wanted().use().length; day++) {
            int today = day;
            for (Batch batch : item.batches()) {
                for (long i = 0; Math.max(0, batch.arrives()) == day && i < batch.grains() / Scene.PIECE; i++) {
                    shelf.add(batch.last());
                }
            }
            shelf.removeIf(last -> last < today);
            shelf.sort(Comparator.naturalOrder());
            assertThat(course.opening()[day]).isEqualTo(shelf.size() * Scene.PIECE);
            long wanted = item.wanted().use()[day] / Scene.PIECE;
            while (wanted > 0 && !shelf.isEmpty()) {
                shelf.remove(0);
                wanted--;
            }
            assertThat(course.unmet()[day]).isEqualTo(wanted * Scene.PIECE);
            shelf.removeIf(last -> last <= today);
            assertThat(course.closing()[day]).isEqualTo(shelf.size() * Scene.PIECE);
        }
    }

    private static List<Long> pieces(long[] grains, int days) {
        return Arrays.stream(grains)
                .limit(days)
                .map(value -> value / Scene.PIECE)
                .boxed()
                .toList();
    }
}
