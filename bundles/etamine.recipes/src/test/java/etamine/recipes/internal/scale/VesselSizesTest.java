package etamine.recipes.internal.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.measures.MeasureException;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.Filled;
import etamine.recipes.Vessel;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VesselSizesTest {
    private final VesselSizes vessels = new VesselSizes();

    private Ratio millilitres(String text) {
        return Filled.volume(vessels.read(text)).in(Unit.ML).amount();
    }

    // Outer sizes of gastronorm containers in mm, EN 631-1 (from memory); volumes computed as length x width x depth
    @ParameterizedTest
    @CsvSource(textBlock = """
            2/1, 650, 530
            1/1, 530, 325
            2/3, 354, 325
            1/2, 325, 265
            1/3, 325, 176
            1/4, 265, 162
            1/6, 176, 162
            1/9, 176, 108
            """)
    void knowsGastronormContainersByTheirOuterSize(String size, long length, long width) {
        for (int depth : List.of(20, 40, 65, 100, 150, 200)) {
            assertThat(millilitres("GN " + size + " " + depth + " mm"))
                    .isEqualTo(Ratio.of(length * width * depth, 1000));
        }
    }

    @Test
    void saysThatGastronormVolumesAreUpperBounds() {
        assertThat(vessels.gastronorm()).hasSize(48).allMatch(Vessel::nominal);
        assertThat(vessels.read("GN 1/1 65 mm").get(0).vessel().name()).isEqualTo("GN 1/1 65 mm");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12 x 130 ml                    | 1560
            130 ml                         | 130
            2 x GN 1/1 65 mm, 80 %         | 17914
            2 x gn 1/1 6,5 cm, 80%         | 17914
            30 cm x 20 cm x 4 cm           | 2400
            30 x 20 x 4 cm                 | 2400
            3 x 30 x 20 x 4 cm, 50 %       | 3600
            square 20 cm x 5 cm            | 2000
            2 x square 20 x 5 cm           | 4000
            6 x 1 l + 2 x 500 ml           | 7000
            12 \u00d7 130 ml; 1 l          | 2560
            4 in x 4 in x 1 in             | 262.193024
            """)
    void readsVesselsAsPeopleWriteThem(String text, String millilitres) {
        assertThat(millilitres(text)).isEqualTo(Ratio.parse(millilitres));
    }

    // Pan ratios (from memory, computed): 20 to 25 cm across and 8 to 10 in are both 1.5625; a round pan in place of a
    // square one of the same width holds pi / 4 = 0.7854 of it
    @Test
    void keepsTheRatiosOfPans() {
        assertThat(millilitres("round 25 cm x 5 cm").dividedBy(millilitres("round 20 cm x 5 cm")))
                .isEqualTo(Ratio.parse("1.5625"));
        assertThat(millilitres("round 10 in x 2 in").dividedBy(millilitres("round 8 in x 2 in")))
                .isEqualTo(Ratio.parse("1.5625"));
        assertThat(millilitres("round 20 cm x 5 cm")
                        .dividedBy(millilitres("square 20 cm x 5 cm"))
                        .toDecimal(4, RoundingMode.HALF_UP))
                .hasToString("0.7854");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "much",
                "12",
                "12 x",
                "x",
                "0 x 130 ml",
                "12 x 0 ml",
                "12 x 130 g",
                "GN 1/1",
                "GN 5/7 65 mm",
                "12 x 130 ml, 120 %",
                "12 x 130 ml, 0 %",
                "round 20 cm",
                "round x",
                "1 x 2 x 3 x 4 x 5 cm",
                "20 x 30",
                "GN 1/1 65 mm deep",
                "+;+"
            })
    void refusesWhatIsNoVesselWithASentence(String text) {
        assertThatThrownBy(() -> vessels.read(text))
                .isInstanceOf(MeasureException.class)
                .message()
                .endsWith(".");
    }

    @Test
    void refusesLongTextAtOnce() {
        assertThatThrownBy(() -> vessels.read("x".repeat(1_000_000))).isInstanceOf(MeasureException.class);
    }
}
