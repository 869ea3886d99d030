package etamine.recipes.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Use;
import etamine.recipes.UseLines.Reading;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedLinesTest {
    private final Range range = new Range();

    @BeforeEach
    void list() {
        range.item(
                "celeriac",
                "kg",
                List.of(
                        Range.prepared("peeled, large dice", "0.74", "1 cup = 156 g"),
                        Range.prepared("peeled", "0.8")));
        range.item("butter", "kg");
        range.item("onion", "kg", List.of(), "1 ea = 150 g");
        range.item("parsley", "kg", List.of(), "1 bunch = 60 g");
        range.load("""
                {"id": "breakdown", "name": "Guinea fowl, broken down", "kind": "breakdown",
                 "makes": [{"item": "breakdown", "quantity": "1 kg"}]}""");
    }

    private Use clear(String text) {
        Reading reading = range.lines.read(text);
        assertThat(reading).as(text).isInstanceOf(Reading.Clear.class);
        return ((Reading.Clear) reading).use();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2 cup celeriac, peeled, large dice | 2 cup   | celeriac | peeled, large dice | EP
            2 cups Celeriac, Peeled, Large Dice | 2 cup  | celeriac | peeled, large dice | EP
            1 kg celeriac, peeled AP           | 1 kg    | celeriac | peeled             | AP
            250g butter                        | 250 g   | butter   |                    | AP
            1 1/2 cup butter EP                | 1.5 cup | butter   |                    | EP
            3 onions                           | 3 ea    | onion    |                    | AP
            1/2 onion                          | 0.5 ea  | onion    |                    | AP
            2 bunches parsley                  | 2 bunch | parsley  |                    | AP
            1 kg Guinea fowl, broken down      | 1 kg    | breakdown |                   | AP
            """)
    void readsLinesAsPeopleTypeThem(String text, String quantity, String item, String as, String basis) {
        Use use = clear(text);

        assertThat(use.quantity()).hasToString(quantity);
        assertThat(use.item()).isEqualTo(item);
        assertThat(use.as().orElse(null)).isEqualTo(as);
        assertThat(use.basis().name()).isEqualTo(basis);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2 cup celeriac, peeled, large dice",
                "1 kg celeriac, peeled AP",
                "250 g butter",
                "1 kg butter EP",
                "1 kg Guinea fowl, broken down"
            })
    void readsBackWhatItWrites(String text) {
        Use use = clear(text);

        assertThat(range.lines.write(use)).isEqualTo(text);
        assertThat(clear(range.lines.write(use))).isEqualTo(use);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2 cup celeriak                | add it to the ingredients
            2 cup celer                   | did you mean celeriac
            2 cup celeriac, grated        | has no preparation “grated”
            celeriac                      | Write how much celeriac
            0 g butter                    | more than zero
            much butter                   | much
            """)
    void saysWhatIsUnclear(String text, String part) {
        assertThat(range.lines.read(text))
                .isInstanceOfSatisfying(
                        Reading.Unclear.class,
                        unclear -> assertThat(unclear.text()).contains(part));
    }

    @Test
    void completesItemsThenPreparations() {
        assertThat(range.lines.complete("2 cup cel", 5)).containsExactly("2 cup celeriac");
        assertThat(range.lines.complete("2 cup celeriac, la", 5)).containsExactly("2 cup celeriac, peeled, large dice");
        assertThat(range.lines.complete("2 cup celeriac,", 5)).hasSize(2);
        assertThat(range.lines.complete("", 5)).isEmpty();
    }
}
