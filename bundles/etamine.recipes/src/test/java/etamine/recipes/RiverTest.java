package etamine.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RiverTest {

    private static Quantity grams(long amount) {
        return Quantity.of(amount, Unit.G);
    }

    private static River of(int ingredients) {
        List<River.Node> nodes = new ArrayList<>();
        List<River.Link> links = new ArrayList<>();
        long sum = 0;
        for (int i = 1; i <= ingredients; i++) {
            nodes.add(new River.Node("i" + i, River.Kind.BOUGHT, "Item " + i, "i" + i, 0, grams(i)));
            links.add(new River.Link("i" + i, "made", "Item " + i, grams(i)));
            sum += i;
        }
        nodes.add(new River.Node("made", River.Kind.MADE, "Soup", "soup", 1, grams(sum)));
        nodes.add(new River.Node("served", River.Kind.SERVED, "Soup", "soup", 2, grams(sum)));
        links.add(new River.Link("made", "served", "Soup", grams(sum)));
        return new River("soup", "Soup", Quantity.of(1, Unit.PORTION), nodes, links, List.of(), List.of());
    }

    @Test
    void joinsTheSmallestOfACrowd() {
        River gathered = of(10_000).gathered(20);

        assertThat(gathered.nodes()).hasSize(22);
        assertThat(gathered.node("others:0:BOUGHT").orElseThrow().name()).isEqualTo("9981 others, bought");
        assertThat(gathered.node("others:0:BOUGHT").orElseThrow().amount()).isEqualTo(grams(9_981L * 9_982 / 2));
        assertThat(gathered.into("made")).map(River.Link::amount).contains(grams(10_000));
        assertThat(gathered.into("made").stream().map(River.Link::amount).reduce(Quantity::plus))
                .contains(grams(10_000L * 10_001 / 2));
    }

    @Test
    void leavesARiverAloneThatIsNotCrowded() {
        River river = of(5);
        assertThat(river.gathered(20)).isSameAs(river);
    }

    @Test
    void measuresPartsAgainstTheThickestNode() {
        River river = of(4);
        assertThat(river.part(grams(10))).isEqualTo(1_000_000_000);
        assertThat(river.part(grams(1))).isEqualTo(100_000_000);
        assertThat(river.part(Quantity.of("0.000000000001", Unit.G))).isEqualTo(1);
    }
}
