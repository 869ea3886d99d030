package etamine.recipes.internal.river;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.recipes.River;
import etamine.recipes.internal.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GraphRiversTest {
    private final Range range = new Range();
    private final GraphRivers rivers = new GraphRivers(range.shelf, range::known, range.made);

    private static String recipe(String id, String kind, String uses, String makes, String more) {
        return "{\"id\": \"" + id + "\", \"name\": \"" + id + "\", \"kind\": \"" + kind + "\", \"uses\": [" + uses
                + "], \"makes\": [" + makes + "]" + more + "}";
    }

    private static String line(String item, String quantity) {
        return "{\"item\": \"" + item + "\", \"quantity\": \"" + quantity + "\"}";
    }

    private static String line(String item, String quantity, String as) {
        return "{\"item\": \"" + item + "\", \"quantity\": \"" + quantity + "\", \"as\": \"" + as + "\"}";
    }

    private River portion(String id) {
        return rivers.portion(range.recipe(id));
    }

    private static List<String> flows(River river) {
        return river.links().stream()
                .map(link -> link.from() + " > " + link.to() + " " + link.amount())
                .toList();
    }

    /** USDA SR28 (2015), FOOD_DES row 11124, carrots, refuse 11 % - published. */
    @Test
    void showsTrimAndReductionFallingAway() {
        range.item("carrot", "kg", List.of(Range.prepared("peeled", "0.89")));
        range.item("cream", "g");
        range.load(
                recipe(
                        "puree",
                        "component",
                        line("carrot", "890 g", "peeled") + "," + line("cream", "210 g"),
                        line("puree", "1 kg"),
                        ""),
                recipe("plate", "plate", line("puree", "100 g"), line("plate", "1 portion"), ""));

        River river = portion("plate");
        assertThat(flows(river))
                .containsExactlyInAnyOrder(
                        "bought:carrot > made:puree 89 g",
                        "bought:carrot > trim:bought:carrot:carrot 11 g",
                        "bought:cream > made:puree 21 g",
                        "made:puree > lost:made:puree:puree 10 g",
                        "made:puree > made:plate 100 g",
                        "made:plate > served 100 g");
        assertThat(river.remarks()).hasSize(1);
        assertThat(layer(river, "bought:carrot")).isZero();
        assertThat(layer(river, "served")).isEqualTo(3);
    }

    @Test
    void sendsWhatABreakdownGivesBesidesToOtherUses() {
        range.item("bird", "kg");
        range.load(
                recipe(
                        "breaking",
                        "breakdown",
                        line("bird", "1 kg"),
                        line("breast", "400 g") + "," + line("carcass", "300 g") + "," + line("feet", "100 g"),
                        ""),
                recipe("stock", "component", line("carcass", "300 g"), line("stock", "300 g"), ""),
                recipe("plate", "plate", line("breast", "200 g"), line("plate", "200 g"), ",\"portion\": \"200 g\""));

        assertThat(flows(portion("plate")))
                .containsExactlyInAnyOrder(
                        "bought:bird > made:breaking 500 g",
                        "made:breaking > lost:made:breaking:breaking 100 g",
                        "made:breaking > elsewhere:made:breaking:carcass 150 g",
                        "made:breaking > left-over:made:breaking:feet 50 g",
                        "made:breaking > made:plate 200 g",
                        "made:plate > served 200 g");
    }

    @Test
    void takesABatchOnceWhenAPlateNeedsTwoOfItsOutputs() {
        range.item("bird", "kg");
        range.load(
                recipe(
                        "breaking",
                        "breakdown",
                        line("bird", "1 kg"),
                        line("breast", "500 g") + "," + line("carcass", "500 g"),
                        ""),
                recipe(
                        "plate",
                        "plate",
                        line("breast", "100 g") + "," + line("carcass", "250 g"),
                        line("plate", "350 g"),
                        ",\"portion\": \"350 g\""));

        assertThat(flows(portion("plate")))
                .contains("bought:bird > made:breaking 500 g", "made:breaking > elsewhere:made:breaking:breast 150 g");
    }

    @Test
    void namesWhatCannotBeWeighedAndWhatIsNotWrittenDown() {
        range.item("egg", "ea");
        range.item("rice", "g");
        range.load(recipe(
                "rice-egg",
                "component",
                line("egg", "2 ea") + "," + line("rice", "100 g"),
                line("rice-egg", "300 g"),
                ""));

        River river = rivers.batch(range.recipe("rice-egg"));
        assertThat(river.unweighed()).singleElement().satisfies(each -> {
            assertThat(each.line()).isEqualTo("2 ea egg");
            assertThat(each.why()).isNotBlank();
        });
        assertThat(flows(river)).contains("unwritten:made:rice-egg > made:rice-egg 200 g");
    }

    @Test
    void countsTheWaterThatARecipeSaysItTakesUp() {
        range.item("rice", "g");
        range.load(recipe("rice", "component", line("rice", "100 g"), line("boiled-rice", "260 g"), ""));
        Recipe rice = range.recipe("rice");
        Recipe soaked = rice.withMaking(rice.making().withAbsorbs(Optional.of(Quantity.parse("180 ml"))));

        assertThat(flows(rivers.batch(soaked)))
                .containsExactlyInAnyOrder(
                        "bought:rice > made:rice 100 g",
                        "water:made:rice > made:rice 180 g",
                        "made:rice > lost:made:rice:rice 20 g",
                        "made:rice > served 260 g");
    }

    @Test
    void followsADrinkByVolumeAndShowsWhatIsSpilt() {
        range.item("wine", "l");
        range.load(
                recipe("glass", "drink", line("wine", "750 ml"), line("glass", "725 ml"), ",\"portion\": \"145 ml\""));

        assertThat(flows(portion("glass")))
                .containsExactlyInAnyOrder(
                        "bought:wine > made:glass 150 ml",
                        "made:glass > spilt:made:glass:glass 5 ml",
                        "made:glass > served 145 ml");
    }

    @Test
    void takesAStockThatNobodyHasWeighedToBeAsHeavyAsWater() {
        range.item("bones", "g");
        range.load(
                recipe("stock", "component", line("bones", "5 kg"), line("stock", "2 l"), ""),
                recipe("jus", "component", line("stock", "2 l"), line("jus", "500 ml"), ""),
                recipe("plate", "plate", line("jus", "50 ml"), line("plate", "1 portion"), ""));

        River river = portion("plate");
        assertThat(flows(river))
                .containsExactlyInAnyOrder(
                        "bought:bones > made:stock 500 g",
                        "made:stock > lost:made:stock:stock 300 g",
                        "made:stock > made:jus 200 g",
                        "made:jus > lost:made:jus:jus 150 g",
                        "made:jus > made:plate 50 g",
                        "made:plate > served 50 g");
        assertThat(river.remarks()).anySatisfy(remark -> assertThat(remark).contains("as heavy as water"));
    }

    @Test
    void weighsPiecesByWhatGoesIntoThem() {
        range.item("flour", "g");
        range.load(
                recipe("buns", "component", line("flour", "900 g"), line("bun", "20 ea"), ""),
                recipe("plate", "plate", line("bun", "2 ea"), line("plate", "1 portion"), ""));

        assertThat(flows(portion("plate"))).contains("made:buns > made:plate 90 g", "made:plate > served 90 g");
    }

    @Test
    void leavesALoopOutAndComesToAnEnd() {
        range.item("salt", "g");
        range.load(
                recipe("a", "component", line("b", "10 g") + "," + line("salt", "1 g"), line("a", "11 g"), ""),
                recipe("b", "component", line("a", "10 g"), line("b", "10 g"), ""));

        assertThat(flows(rivers.batch(range.recipe("a")))).contains("bought:salt > made:a 1 g");
    }

    @Test
    void saysWhatIsMissingWhenNothingIsMade() {
        range.item("salt", "g");
        range.load(recipe("a", "component", line("salt", "1 g"), line("a", "1 g"), ""));

        River river = rivers.portion(range.recipe("a").withMakes(List.of()));
        assertThat(river.nodes()).isEmpty();
        assertThat(river.remarks()).containsExactly("a does not say what it makes; write its yield first.");
    }

    /** Whatever the recipes, what comes into a node goes out of it, and the bought equals the served and the fallen. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void conservesWhatFlowsThroughEveryNode(long seed) {
        Random random = new Random(seed);
        generate(random, 40);
        for (String id : range.recipes.all().keySet()) {
            River river = rivers.batch(range.recipe(id));
            Ratio in = Ratio.ZERO;
            Ratio out = Ratio.ZERO;
            for (River.Node node : river.nodes()) {
                Ratio into = sum(river.into(node.id()));
                Ratio outOf = sum(river.outOf(node.id()));
                if (node.kind() == River.Kind.MADE) {
                    assertThat(into).as(id + " " + node.id()).isEqualTo(outOf);
                }
                in = node.kind().source() ? in.plus(outOf) : in;
                out = node.kind().end() ? out.plus(into) : out;
                assertThat(node.kind().source() ? outOf : into)
                        .isEqualTo(node.amount().amount());
            }
            assertThat(in).as(id).isEqualTo(out);
            river.links().forEach(link -> assertThat(layer(river, link.from())).isLessThan(layer(river, link.to())));
        }
    }

    private void generate(Random random, int count) {
        for (int i = 0; i < 12; i++) {
            String yield = "0." + (1 + random.nextInt(99)) + "1";
            range.item("i" + i, "g", List.of(Range.prepared("cut", random.nextInt(5) == 0 ? "1.5" : yield)));
        }
        List<String> entries = new ArrayList<>();
        List<String> things = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<String> uses = new ArrayList<>();
            for (int line = 0; line <= random.nextInt(4); line++) {
                boolean made = !things.isEmpty() && random.nextBoolean();
                String amount = (1 + random.nextInt(900)) + " g";
                uses.add(
                        made
                                ? line(things.get(random.nextInt(things.size())), amount)
                                : line("i" + random.nextInt(12), amount, "cut"));
            }
            List<String> makes = new ArrayList<>();
            for (int out = 0; out <= random.nextInt(3); out++) {
                makes.add(line("r" + i + "-" + out, (1 + random.nextInt(900)) + " g"));
            }
            entries.add(recipe("r" + i, "component", String.join(",", uses), String.join(",", makes), ""));
            for (int out = 0; out < makes.size(); out++) {
                things.add("r" + i + "-" + out);
            }
        }
        range.load(entries.toArray(String[]::new));
    }

    private static Ratio sum(List<River.Link> links) {
        return links.stream().map(link -> link.amount().amount()).reduce(Ratio.ZERO, Ratio::plus);
    }

    private static int layer(River river, String node) {
        return river.node(node).orElseThrow().layer();
    }
}
