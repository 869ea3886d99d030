package etamine.recipes.internal.scale;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.Practical;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class KitchenStepsTest {

    // Steps as kitchens commonly measure (common practice): scales by load, spoons in quarters, eggs in halves
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1184.2 g   | 1.18 kg      | -0.4
            632 ml     | 630 ml       | -0.3
            105.26 g   | 105 g        | -0.2
            43.7 g     | 44 g         | 0.7
            7.84 g     | 8 g          | 2.0
            0.37 g     | 0.35 g       | -5.4
            0.001 g    | 0.001 g      | 0.0
            12.34 kg   | 12.3 kg      | -0.3
            1.3 tsp    | 1 1/4 tsp    | -3.8
            0.9 tbsp   | 2 3/4 tsp    | 1.9
            1/3 cup    | 1/3 cup      | 0.0
            0.66 cup   | 2/3 cup      | 1.0
            0.29 cup   | 1/4 cup 1/2 tbsp | -3.0
            5/3 cup    | 1 2/3 cup    | 0.0
            20 oz      | 1 lb 4 oz    | 0.0
            41.1 oz    | 2 lb 9 oz    | -0.2
            2.63 ea    | 2 1/2 ea     | -4.9
            13.16 ea   | 13 ea        | -1.2
            1.3 dozen  | 16 ea        | 2.6
            0.3 ea     | 1/4 ea       | -16.7
            2.2 clove  | 2 clove      | -9.1
            """)
    void roundsToWhatAKitchenMeasuresAndSaysHowFarThatIsOff(String exact, String measured, String error) {
        Practical practical = KitchenSteps.of(Quantity.parse(exact));

        assertThat(practical.text()).isEqualTo(measured);
        assertThat(practical.errorPercent()).hasToString(error);
        assertThat(practical.exact()).isEqualTo(Quantity.parse(exact));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void neverRoundsToNothingNorFarAway(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            Unit unit = Unit.all().get(random.nextInt(Unit.all().size()));
            Quantity exact = new Quantity(Ratio.of(1 + random.nextInt(1_000_000), 1 + random.nextInt(10_000)), unit);

            Practical practical = KitchenSteps.of(exact);

            assertThat(practical.measured().signum()).as(exact.toString()).isPositive();
            assertThat(practical.errorPercent().abs().doubleValue())
                    .as(exact + " as " + practical.measured())
                    .isLessThanOrEqualTo(34);
        }
    }
}
