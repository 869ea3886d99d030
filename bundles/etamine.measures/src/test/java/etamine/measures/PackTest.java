package etamine.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PackTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
            6 x 1 l,       6 x 1 l,      6 l
            6x1l,          6 x 1 l,      6 l
            6 × 1 l,       6 x 1 l,      6 l
            6 X 500 g,     6 x 500 g,    3000 g
            6*1.5l,        6 x 1.5 l,    9 l
            4 ea,          4 ea,         4 ea
            25 kg,         25 kg,        25 kg
            6 x 4 x 100 g, 24 x 100 g,   2400 g
            12 x 1/2 pt,   12 x 0.5 pt,  6 pt
            10 x 2 lb 8 oz, 10 x 2.5 lb, 25 lb
            15 dozen,      15 dozen,     15 dozen
            20 x 1 bunch,  20 x 1 bunch, 20 bunch
            """)
    void readsAndWritesPacks(String text, String canonical, String total) {
        Pack pack = Pack.parse(text);
        assertThat(pack).hasToString(canonical);
        assertThat(Pack.parse(canonical)).isEqualTo(pack);
        assertThat(pack.total()).isEqualTo(Quantity.parse(total));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "6 x", "x 1 l", "6 x 1", "0 x 1 l", "6 x 0 l", "-6 x 1 l", "6 x -1 l", "6 x l"})
    void refusesWhatIsNoPack(String text) {
        assertThatThrownBy(() -> Pack.parse(text)).isInstanceOf(MeasureException.class);
    }
}
