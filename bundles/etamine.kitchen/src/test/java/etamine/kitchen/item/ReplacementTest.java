package etamine.kitchen.item;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.measures.Equivalence;
import etamine.measures.Pack;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReplacementTest {

    private static Item item(String name, Unit countIn, String... measures) {
        List<Equivalence> equivalences = Stream.of(measures)
                .map(text -> text.split(" = "))
                .map(sides -> new Equivalence(Quantity.parse(sides[0]), Quantity.parse(sides[1])))
                .toList();
        return new Item(
                name,
                name,
                "",
                false,
                "",
                Optional.empty(),
                countIn,
                equivalences,
                List.of(new Preparation(
                        "diced",
                        Ratio.parse("0.8"),
                        List.of(new Equivalence(Quantity.parse("1 cup"), Quantity.parse("150 g"))))),
                Allergens.unknown(),
                Optional.empty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            500 g   | 500 g
            2 lb    | 2 lb
            2 ea    | 1.8 kg
            1/2 ea  | 450 g
            1 bunch | 1 bunch
            """)
    void keepsWhatMeansTheSameAndWeighsWhatDoesNot(String written, String meant) {
        // 1 ea is 900 g of the one and 750 g of the other; a bunch nobody ever explained stays as it was
        Replacement replacement =
                new Replacement(item("root", Unit.KG, "1 ea = 900 g"), item("celeriac", Unit.KG, "1 ea = 750 g"));

        assertThat(replacement.quantity(Quantity.parse(written))).isEqualTo(Quantity.parse(meant));
    }

    @Test
    void readsAPreparationByItsOwnMeasures() {
        Replacement replacement = new Replacement(item("root", Unit.KG), item("celeriac", Unit.KG));

        assertThat(replacement.quantity(Quantity.parse("2 cup"), Optional.of("diced")))
                .isEqualTo(Quantity.parse("2 cup"));
    }

    @Test
    void saysWhatIsMissingWhereTheOtherCannotSayIt() {
        Replacement replacement = new Replacement(item("egg", Unit.EA), item("whole egg", Unit.KG));

        assertThatThrownBy(() -> replacement.quantity(Quantity.parse("3 ea")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("3 ea of egg")
                .hasMessageContaining("what 1 ea weighs")
                .hasMessageContaining("merge again");
    }

    @Test
    void pricesAndPacksMeanTheSameAmount() {
        Replacement replacement =
                new Replacement(item("cream a", Unit.L, "1 l = 1 kg"), item("cream b", Unit.KG, "1 l = 800 g"));

        assertThat(replacement.price(UnitPrice.of("4.10", "1 l"))).isEqualTo(UnitPrice.of("4.10", "1 l"));
        assertThatThrownBy(() -> new Replacement(item("a", Unit.L), item("b", Unit.KG)).pack(Pack.parse("6 x 1 l")))
                .isInstanceOf(IllegalArgumentException.class);
        Replacement pieces = new Replacement(item("a", Unit.KG, "1 ea = 100 g"), item("b", Unit.KG, "1 ea = 125 g"));
        assertThat(pieces.pack(Pack.parse("6 x 4 ea"))).isEqualTo(Pack.parse("6 x 400 g"));
    }

    @Test
    void writesNoFractionThatAFileCouldNotHold() {
        Replacement replacement =
                new Replacement(item("a", Unit.KG, "1 ea = 1/7 kg"), item("b", Unit.KG, "1000003 ea = 1 kg"));

        Quantity meant = replacement.quantity(Quantity.parse("1/1000003 ea"));

        assertThat(meant.toString()).matches("0\\.[0-9]{1,9} g");
        assertThat(meant.dividedBy(Quantity.parse("1/7000021 kg"))
                        .minus(Ratio.ONE)
                        .abs())
                .isLessThan(Ratio.parse("0.00001"));
    }
}
