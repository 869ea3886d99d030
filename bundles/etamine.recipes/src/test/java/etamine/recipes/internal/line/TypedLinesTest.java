package etamine.recipes.internal.line;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Use;
import etamine.recipes.UseLines.Part;
import etamine.recipes.UseLines.Reading;
import etamine.recipes.internal.Range;
import java.util.List;
import java.util.stream.Collectors;
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
        range.item("butter", "kg", List.of(Range.prepared("melted", "1")));
        range.item("onions", "kg", List.of(Range.prepared("diced", "0.9")), "1 ea = 150 g");
        range.item("parsley", "kg", List.of(), "1 bunch = 60 g");
        range.item("egg", "ea", List.of(), "1 ea = 60 g");
        range.item("garlic", "kg", List.of(), "1 clove = 3 g");
        range.item("oil", "l");
        range.item("fine salt", "kg");
        range.item("garden peas, frozen", "kg");
        range.load("""
                {"id": "breakdown", "name": "Guinea fowl, broken down", "kind": "breakdown",
                 "makes": [{"item": "breakdown", "quantity": "1 kg"}]}""");
    }

    private Use clear(String text) {
        Reading reading = range.lines.read(text);
        assertThat(reading).as(text).isInstanceOf(Reading.Clear.class);
        return ((Reading.Clear) reading).use();
    }

    private Reading.Unclear unclear(String text) {
        Reading reading = range.lines.read(text);
        assertThat(reading).as(text).isInstanceOf(Reading.Unclear.class);
        return (Reading.Unclear) reading;
    }

    /** The parts of a line as {@code PART text}. */
    private List<String> parts(String text) {
        return range.lines.read(text).spans().stream()
                .map(span -> span.part() + " " + text.substring(span.from(), span.to()))
                .toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2 cup celeriac, peeled, large dice | 2 cup   | celeriac | peeled, large dice | EP
            2 cups Celeriac, Peeled, Large Dice | 2 cup  | celeriac | peeled, large dice | EP
            1 kg celeriac, peeled AP           | 1 kg    | celeriac | peeled             | AP
            250g butter                        | 250 g   | butter   |                    | AP
            1 1/2 cup butter EP                | 1.5 cup | butter   |                    | EP
            3 onions                           | 3 ea    | onions   |                    | AP
            1/2 onion                          | 0.5 ea  | onions   |                    | AP
            1 1/2 lb onions, diced             | 1.5 lb  | onions   | diced              | EP
            2 bunches parsley                  | 2 bunch | parsley  |                    | AP
            3 large eggs                       | 3 ea    | egg      |                    | AP
            2 cloves of garlic                 | 2 clove | garlic   |                    | AP
            ½ tsp oil                          | 0.5 tsp | oil      |                    | AP
            1½ cups oil                        | 1.5 cup | oil      |                    | AP
            1,5 kg butter                      | 1.5 kg  | butter   |                    | AP
            butter 250 g                       | 250 g   | butter   |                    | AP
            Butter: 250 g                      | 250 g   | butter   |                    | AP
            butter - 250 g                     | 250 g   | butter   |                    | AP
            celeriac, peeled, large dice 2 cup | 2 cup   | celeriac | peeled, large dice | EP
            2 lb 4 oz butter                   | 36 oz   | butter   |                    | AP
            6 x 1 l oil                        | 6 l     | oil      |                    | AP
            1 kg peeled celeriac               | 1 kg    | celeriac | peeled             | EP
            1 kg celeriac peeled               | 1 kg    | celeriac | peeled             | EP
            250 g butter (soft, not cold)      | 250 g   | butter   |                    | AP
            2 kg garden peas                   | 2 kg    | garden peas, frozen |         | AP
            1 kg Guinea fowl, broken down      | 1 kg    | breakdown |                   | AP
            """)
    void readsLinesAsPeopleTypeThem(String text, String quantity, String item, String as, String basis) {
        Use use = clear(text);

        assertThat(use.quantity().compareTo(etamine.measures.Quantity.parse(quantity)))
                .as(use.quantity().toString())
                .isZero();
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
                "250 g butter, melted or oil or egg",
                "1 kg Guinea fowl, broken down"
            })
    void readsBackWhatItWrites(String text) {
        Use use = clear(text);

        assertThat(range.lines.write(use)).isEqualTo(text);
        assertThat(clear(range.lines.write(use))).isEqualTo(use);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            250 g butter or oil         |
            250 g butter or oil, melted | melted
            250 g butter, melted or oil | melted
            """)
    void readsWhatMayStandIn(String text, String as) {
        Use use = clear(text);

        assertThat(use.item()).isEqualTo("butter");
        assertThat(use.substitutes()).containsExactly("oil");
        assertThat(use.as().orElse(null)).isEqualTo(as);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2 cup turnip                  | add it to the ingredients
            2 cup celer                   | did you mean celeriac
            2 cup celeriac, grated        | has no preparation “grated”
            celeriac                      | Write how much celeriac
            fine salt to taste            | “to taste”
            0 g butter                    | more than zero
            1,500 g butter                | two ways
            2-3 cloves garlic             | leaves open how much
            2 to 3 cloves garlic          | leaves open how much
            2 kg smoked celeriac          | “smoked” is not understood
            2 cusp celeriac               | did you mean cup
            much butter                   | how much butter
            """)
    void saysWhatIsUnclear(String text, String part) {
        assertThat(unclear(text).text()).contains(part);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2 cup celriac, peeled     | 2 cup celeriac, peeled
            250 g buttre              | 250 g butter
            2 cusp celeriac           | 2 cup celeriac
            2-3 cloves garlic         | 2 cloves garlic
            2 kg celeriac, grated     | 2 kg celeriac, peeled, large dice
            2 kg smoked celeriac      | 2 kg celeriac
            """)
    void suggestsWholeLinesThatMayBeMeant(String text, String meant) {
        assertThat(unclear(text).suggestions()).contains(meant);
        unclear(text).suggestions().forEach(this::clear);
    }

    @Test
    void marksEachPartOfALine() {
        assertThat(parts("2  cup celeriac,  peeled, large dice EP"))
                .containsExactly("QUANTITY 2  cup", "ITEM celeriac", "PREPARATION peeled, large dice", "BASIS EP");
        assertThat(parts("3 large eggs (free range)"))
                .containsExactly("QUANTITY 3", "NOTE large", "ITEM eggs", "NOTE (free range)");
        assertThat(parts("2 cup turnip, grated")).containsExactly("QUANTITY 2 cup", "UNKNOWN turnip, grated");
        assertThat(parts("2-3 cloves garlic")).containsExactly("UNKNOWN 2-3");
        assertThat(parts("2 kg celeriac, grated")).containsExactly("QUANTITY 2 kg", "ITEM celeriac", "UNKNOWN grated");
        assertThat(parts("250 g butter or oil")).containsExactly("QUANTITY 250 g", "ITEM butter", "SUBSTITUTE oil");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "(",
                "()",
                "((((",
                ",",
                ",,,,",
                "1",
                "½",
                "/",
                "1/0 g butter",
                "- g butter",
                "or",
                "1 kg or or or",
                "99999999999999999999999999 g butter",
                "1 g \u0000",
                "\ud83e\udd66 2 kg",
                "2 kg \u5357\u74dc",
                "\u0661\u0662 g butter",
                "1 kg ((butter)",
                "butter butter butter 1 1 1",
                "AP",
                "1 EP",
                "of",
                "1 kg of",
                "x x x"
            })
    void readsAnythingWithoutBreaking(String text) {
        assertThat(range.lines.read(text)).isInstanceOf(Reading.Unclear.class);
        assertThat(range.lines.complete(text, 5)).hasSizeLessThanOrEqualTo(5);
        range.lines
                .read(text)
                .spans()
                .forEach(span ->
                        assertThat(text.substring(span.from(), span.to())).isNotEmpty());
    }

    @Test
    void completesItemsThenPreparations() {
        assertThat(range.lines.complete("2 cup cel", 5)).containsExactly("2 cup celeriac");
        assertThat(range.lines.complete("2 cup celeriac, la", 5)).containsExactly("2 cup celeriac, peeled, large dice");
        assertThat(range.lines.complete("2 cup celeriac,", 5)).hasSize(2);
        assertThat(range.lines.complete("", 5)).isEmpty();
    }

    @Test
    void offersNothingThatIsPutAwayButStillUnderstandsIt() {
        range.load("""
                {"id": "old-stock", "name": "Old stock", "archived": true, "makes": [{"item": "old-stock", "quantity": "1 l"}]}""");

        assertThat(range.lines.complete("1 l old", 5)).isEmpty();
        assertThat(clear("1 l old stock").item()).isEqualTo("old-stock");
        assertThat(unclear("1 l old stok").suggestions().stream().collect(Collectors.joining()))
                .doesNotContain("Old");
    }

    @Test
    void keepsSizesThatAreUnitsOfTheItem() {
        range.item("duck egg", "ea", List.of(), "1 large = 80 g");

        assertThat(clear("3 large duck eggs").quantity()).hasToString("3 large");
        assertThat(parts("3 large duck eggs")).containsExactly("QUANTITY 3 large", "ITEM duck eggs");
        assertThat(range.lines.read("3 large duck eggs").spans()).noneMatch(span -> span.part() == Part.NOTE);
    }
}
