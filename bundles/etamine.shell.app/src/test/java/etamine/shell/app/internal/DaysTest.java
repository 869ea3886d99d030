package etamine.shell.app.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DaysTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 24);
    private final Days days = new Days(TODAY);

    @ParameterizedTest
    @CsvSource(textBlock = """
            2026-11-27, 2026-11-27
            2026-12-07, 2026-12-07
            2026-12-08, 2026-12-07
            2026-11-01, 2026-11-24
            """)
    void keepsThePickedDayOnTheRibbon(LocalDate wanted, LocalDate picked) {
        days.pick(wanted);
        assertThat(days.picked()).isEqualTo(picked);
    }

    @Test
    void goesOnWithTodayAtMidnightWhenTodayWasPicked() {
        days.turn(TODAY.plusDays(1));
        assertThat(days.picked()).isEqualTo(TODAY.plusDays(1));
    }

    @Test
    void staysOnAnotherPickedDayAtMidnight() {
        days.pick(TODAY.plusDays(5));
        days.turn(TODAY.plusDays(1));
        assertThat(days.picked()).isEqualTo(TODAY.plusDays(5));
    }

    @Test
    void tellsOnlyRealChanges() {
        List<LocalDate> told = new ArrayList<>();
        days.onChange(() -> told.add(days.picked()));
        days.pick(TODAY);
        days.turn(TODAY);
        days.pick(TODAY.plusDays(2));
        assertThat(told).containsExactly(TODAY.plusDays(2));
    }
}
