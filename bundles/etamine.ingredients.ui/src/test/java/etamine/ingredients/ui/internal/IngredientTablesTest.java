package etamine.ingredients.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.item.Preparation;
import etamine.measures.Ratio;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Measures, preparations and yield tests, row by row. */
class IngredientTablesTest extends CeleriacKitchen {
    @Test
    void editsMeasuresRowByRow() {
        save(TableText.measure(0, List.of("1 ea", "750 g")));
        save(TableText.measure(1, List.of("1 cup", "150 g")));
        save(TableText.measure(0, List.of("1 ea", "800 g")));
        assertThat(TableText.measures(now().item()))
                .containsExactly(List.of("1 ea", "800 g"), List.of("1 cup", "150 g"));

        save(TableText.measure(0, List.of("", "")));

        assertThat(TableText.measures(now().item())).containsExactly(List.of("1 cup", "150 g"));
        assertThat(TableText.measure(1, List.of("1 cup", ""))).isInstanceOf(Attempt.Bad.class);
        assertThat(TableText.measure(1, List.of("1 cup", "0 g"))).isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void editsPreparationsWithYieldMeasuresAndNote() {
        List<String> diced = List.of("peeled, large dice", "74", "1 cup = 156 g; 1 ea = 555 g", "own test, 2026");
        save(TableText.preparation(0, diced));

        assertThat(TableText.preparations(now())).containsExactly(diced);
        assertThat(now().item().preparations().get(0).yield()).isEqualTo(Ratio.parse("0.74"));

        save(TableText.preparation(0, List.of("diced", "80 %", "", "")));
        assertThat(now().yields()).isEmpty();
        save(TableText.preparation(0, List.of("", "", "", "")));
        assertThat(now().item().preparations()).isEmpty();
        assertThat(TableText.preparation(0, List.of("x", "0", "", ""))).isInstanceOf(Attempt.Bad.class);
        assertThat(TableText.preparation(0, List.of("x", "80", "1 cup", ""))).isInstanceOf(Attempt.Bad.class);
        assertThat(TableText.preparation(0, List.of("", "80", "", ""))).isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void keepsAnExactYieldWhoseShownFormIsRounded() {
        model.save(
                "celeriac",
                ingredient -> ingredient.withPreparations(
                        List.of(new Preparation("trimmed", Ratio.of(46, 52), List.of())), java.util.Map.of()));
        assertThat(TableText.preparations(now()).get(0).get(1)).isEqualTo("88.4615");

        save(TableText.preparation(0, List.of("trimmed well", "88.4615", "", "")));

        assertThat(now().item().preparations().get(0).yield()).isEqualTo(Ratio.of(46, 52));
    }

    @Test
    void recordsTestsReadsThemTogetherAndWorksWithTheirMean() {
        save(TableText.preparation(0, List.of("peeled", "70", "", "")));
        test(0, "peeled", "2026-11-20", "trim", "1 kg", "740 g", "Ana", "small roots");
        test(1, "peeled", "", "", "2 kg", "1.52 kg", "", "");
        assertThat(TestText.rows(now()))
                .containsExactly(
                        List.of("peeled", "2026-11-20", "trim", "1 kg", "740 g", "74 %", "Ana", "small roots"),
                        List.of("peeled", "2026-11-24", "trim", "2 kg", "1.52 kg", "76 %", "", ""));
        assertThat(SpreadText.rows(now()))
                .extracting(row -> row.what() + " " + row.yield() + " " + row.spread())
                .containsExactly("working yield 70 % ", "trim 75 % ± 1.4142, 74 to 76 %");

        model.save("celeriac", now -> now.accepting("peeled", List.of(0, 1), model.today(), "Ben"));

        assertThat(TableText.preparations(now()).get(0).get(1)).isEqualTo("75");
        assertThat(TestText.rows(now()).get(0).get(5)).isEqualTo("74 %, accepted");
        assertThat(SpreadText.rows(now()))
                .last()
                .satisfies(row -> assertThat(row.what()).isEqualTo("accepted 2026-11-24 by Ben"));
        test(0, "", "", "", "", "", "", "");
        assertThat(TestText.rows(now())).hasSize(1);
    }

    @Test
    void saysWhatToDoAboutATestItCannotRead() {
        save(TableText.preparation(0, List.of("peeled", "70", "", "")));

        assertThat(bad("chopped", "", "", "1 kg", "800 g")).contains("peeled");
        assertThat(bad("peeled", "yesterday", "", "1 kg", "800 g")).contains("2026-11-24");
        assertThat(bad("peeled", "", "boil", "1 kg", "800 g")).contains("trim or cooking");
        assertThat(bad("peeled", "", "", "1 kg", "1 cup")).contains("1 kg and 800 g");
        assertThat(bad("peeled", "", "", "1 kg", "")).contains("what came out");
    }

    private void test(int row, String... cells) {
        save(TestText.row(now(), row, List.of(cells), known.kitchen().today()));
    }

    private String bad(String... cells) {
        List<String> row = new java.util.ArrayList<>(List.of(cells));
        row.addAll(List.of("", ""));
        Attempt attempt = TestText.row(now(), 0, row, known.kitchen().today());
        assertThat(attempt).isInstanceOf(Attempt.Bad.class);
        return ((Attempt.Bad) attempt).sentence();
    }
}
