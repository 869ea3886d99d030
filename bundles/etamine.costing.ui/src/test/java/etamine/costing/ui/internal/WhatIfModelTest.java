package etamine.costing.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.costing.Experiment;
import etamine.costing.PriceChange;
import etamine.measures.Quantity;
import etamine.widgets.Choice;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhatIfModelTest {
    private final SetParts desk = new SetParts();
    private final WhatIfModel model = new WhatIfModel(desk.parts());

    @Test
    void offersPricesMenuPricesAndLines() {
        assertThat(model.choices())
                .extracting(Choice::label)
                .contains("Cream: price", "Tart: menu price", "Cream in Tart")
                .doesNotContain("Tart: price", "Tart: what a batch gives");
    }

    @Test
    void changesNothingUntilSomethingIsMoved() {
        model.add("price/cream");
        assertThat(model.experiment().isEmpty()).isTrue();
        assertThat(model.outcome().sentence(false)).startsWith("Nothing is moved");
        assertThat(model.outcome().rows()).allMatch(row -> row.changeText().isEmpty());
    }

    @Test
    void putsMovedLeversIntoOneExperiment() {
        model.add("price/cream");
        model.add("line/0/tart");
        model.add("menu/soup");
        model.move("price/cream", new BigDecimal("14"));
        model.move("line/0/tart", new BigDecimal("120"));
        assertThat(model.experiment())
                .isEqualTo(Experiment.none()
                        .withPrice("cream", PriceChange.by(new BigDecimal("14")))
                        .withLine("tart", 0, Quantity.parse("120 g")));
        assertThat(model.changes())
                .containsExactly(
                        "Cream, price: 4.10\u00a0/\u00a0l \u2192 4.674\u00a0/\u00a0l; offer D-104",
                        "Cream in Tart: 100\u00a0g \u2192 120\u00a0g a batch");
    }

    @Test
    void showsTheWholeMenuWithWhatMovesMostFirst() {
        model.add("price/cream");
        model.move("price/cream", new BigDecimal("14"));
        WhatIfModel.Outcome outcome = model.outcome();
        assertThat(outcome.rows()).extracting(TrialRow::name).containsExactly("Tart", "Soup");
        assertThat(outcome.rows().get(0).costText()).isEqualTo("2.00 \u2192 2.30");
        assertThat(outcome.rows().get(0).changeText()).isEqualTo("+0.30");
        assertThat(outcome.rows().get(0).percentText()).isEqualTo("20.0\u00a0% \u2192 23.0\u00a0%");
        assertThat(outcome.rows().get(1).costText()).isEqualTo("1.00");
        assertThat(outcome.sentence(true)).isEqualTo("1 plate moves, most of all Tart by +0.30.");
    }

    @Test
    void writesOnlyWhenAcceptedAndForgetsWhenDiscarded() {
        model.add("menu/tart");
        model.move("menu/tart", new BigDecimal("12.00"));
        assertThat(desk.accepted).isEmpty();
        model.accept();
        assertThat(desk.accepted).containsExactly(Experiment.none().withMenuPrice("tart", new BigDecimal("12.00")));
        model.discard();
        assertThat(model.out()).isEmpty();
    }

    @Test
    void refusesALeverOfWhatHasNoPrice() {
        assertThat(model.add("price/leek")).isFalse();
        assertThat(model.out()).isEmpty();
    }

    @Test
    void putsOutAPlatesPriceAndLines() {
        model.addPlate("tart");
        assertThat(model.out()).extracting(Lever::id).containsExactly("menu/tart", "line/0/tart", "line/1/tart");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            0.4, 0.5
            3.1, 5
            100, 100
            0.00011, 0.0002
            7, 10
            0, 1
            """)
    void stepsInRoundNumbers(BigDecimal wanted, BigDecimal step) {
        assertThat(Levers.roundStep(wanted)).isEqualByComparingTo(step);
    }
}
