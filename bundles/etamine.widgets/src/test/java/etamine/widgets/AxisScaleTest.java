package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AxisScaleTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
            0.3, 9.7, 5, 0, 10, 2
            4.12, 4.61, 5, 4.1, 4.7, 0.1
            -3, 12, 4, -5, 15, 5
            120, 980, 4, 0, 1000, 500
            5, 5, 4, 4, 6, 2
            0, 0, 4, 0, 0.5, 0.5
            """)
    void spansTheValuesInRoundSteps(double least, double most, int steps, double low, double high, double step) {
        AxisScale scale = AxisScale.over(least, most, steps);
        assertThat(scale.low()).isEqualTo(low, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(scale.high()).isEqualTo(high, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(scale.step()).isEqualTo(step, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void writesFiguresWithTheDecimalsTheStepNeeds() {
        AxisScale scale = AxisScale.over(4.12, 4.61, 5);
        assertThat(scale.marks()).hasSize(7);
        assertThat(scale.text(scale.marks().get(1))).isEqualTo("4.2");
        assertThat(AxisScale.over(-3, 12, 4).text(-0.0)).isEqualTo("0");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            2026-11-20, 2026-11-25, 600, 6, 2026-11-20
            2026-10-01, 2026-11-25, 600, 8, 2026-10-05
            2026-08-01, 2026-11-25, 600, 9, 2026-08-03
            2026-01-15, 2026-11-25, 800, 10, 2026-02-01
            2020-03-01, 2026-11-25, 400, 3, 2021-01-01
            """)
    void namesDaysWeeksMonthsOrYearsByTheRoom(LocalDate first, LocalDate last, int width, int count, LocalDate mark) {
        DayAxis axis = DayAxis.over(first, last, width);
        assertThat(axis.marks()).hasSize(count).startsWith(mark);
    }
}
