package etamine.base.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FlowLayoutTest {
    private static final FlowSpace ROOM = new FlowSpace(900, 500, 8, 60);

    private static Flow.Node node(String id, int layer, long amount) {
        return new Flow.Node(id, layer, amount, false, 100, 30);
    }

    @Test
    void drawsThicknessInProportionToAmount() {
        Flow flow = new Flow(
                List.of(node("big", 0, 3_000), node("small", 0, 1_000), node("sum", 1, 4_000)),
                List.of(new Flow.Link("big", "sum", 3_000), new Flow.Link("small", "sum", 1_000)));

        FlowPlan plan = FlowLayout.plan(flow, ROOM);
        int big = plan.places().get(0).band();
        int small = plan.places().get(1).band();
        assertThat(big).isBetween(3 * small - 3, 3 * small + 3);
        assertThat(plan.places().get(2).band()).isBetween(big + small - 2, big + small + 2);
        assertThat(plan.height()).isEqualTo(500);
        assertThat(plan.width()).isEqualTo(900);
    }

    @Test
    void keepsWhatFallsBelowTheOthers() {
        Flow flow = new Flow(
                List.of(node("a", 0, 100), new Flow.Node("loss", 1, 90, true, 80, 30), node("kept", 1, 10)),
                List.of(new Flow.Link("a", "loss", 90), new Flow.Link("a", "kept", 10)));

        List<FlowPlan.Place> places = FlowLayout.plan(flow, ROOM).places();
        assertThat(places.get(1).y()).isGreaterThan(places.get(2).y());
    }

    @Test
    void drawsATrickleBesideAFlood() {
        Flow flow = new Flow(
                List.of(node("flood", 0, 10_000_000_000L), node("trickle", 0, 1), node("sea", 1, 10_000_000_001L)),
                List.of(new Flow.Link("flood", "sea", 10_000_000_000L), new Flow.Link("trickle", "sea", 1)));

        FlowPlan plan = FlowLayout.plan(flow, ROOM);
        assertThat(plan.places().get(1).band()).isEqualTo(1);
        assertThat(plan.ribbons().get(1).thickness()).isEqualTo(1);
    }

    @Test
    void growsWhereTheLabelsNeedMoreRoomThanThereIs() {
        List<Flow.Node> nodes = new ArrayList<>();
        List<Flow.Link> links = new ArrayList<>();
        nodes.add(node("plate", 1, 40));
        for (int i = 0; i < 40; i++) {
            nodes.add(node("n" + i, 0, 1));
            links.add(new Flow.Link("n" + i, "plate", 1));
        }

        FlowPlan plan = FlowLayout.plan(new Flow(nodes, links), ROOM);
        assertThat(plan.height()).isGreaterThan(500);
        assertNothingOverlaps(plan);
    }

    @Test
    void drawsNothingOfNothing() {
        assertThat(FlowLayout.plan(new Flow(List.of(), List.of()), ROOM).places())
                .isEmpty();
    }

    @Test
    void refusesALinkThatLeadsBack() {
        Flow back = new Flow(List.of(node("a", 1, 1), node("b", 0, 1)), List.of(new Flow.Link("a", "b", 1)));
        assertThatIllegalArgumentException().isThrownBy(() -> FlowLayout.plan(back, ROOM));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void layNothingOnAnythingElse(long seed) {
        assertNothingOverlaps(FlowLayout.plan(random(seed), ROOM));
    }

    private static void assertNothingOverlaps(FlowPlan plan) {
        for (FlowPlan.Place one : plan.places()) {
            assertThat(one.y()).isGreaterThanOrEqualTo(0);
            assertThat(one.y() + one.height()).isLessThanOrEqualTo(plan.height());
            assertThat(one.x() + one.width()).isLessThanOrEqualTo(plan.width());
            for (FlowPlan.Place other : plan.places()) {
                boolean beside = one.x() + one.width() <= other.x() || other.x() + other.width() <= one.x();
                boolean above = one.y() + one.height() <= other.y() || other.y() + other.height() <= one.y();
                assertThat(one == other || beside || above).isTrue();
            }
            for (FlowPlan.Ribbon ribbon : plan.ribbons()) {
                for (FlowPlan.Reach reach : ribbon.reaches()) {
                    boolean across = reach.fromX() < one.x() + one.width() && reach.toX() > one.x();
                    boolean on = reach.fromY() < one.y() + one.height() && reach.fromY() + ribbon.thickness() > one.y();
                    assertThat(across && on).isFalse();
                }
            }
        }
    }

    private static Flow random(long seed) {
        Random random = new Random(seed);
        List<Flow.Node> nodes = new ArrayList<>();
        List<Flow.Link> links = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            int layer = i / 6;
            nodes.add(new Flow.Node(
                    "n" + i, layer, 1 + random.nextInt(5_000), random.nextInt(4) == 0, 40 + random.nextInt(90), 32));
            for (int link = 0; layer > 0 && link < 2; link++) {
                links.add(new Flow.Link("n" + random.nextInt(layer * 6), "n" + i, 1 + random.nextInt(900)));
            }
        }
        return new Flow(nodes, links);
    }
}
