package etamine.shell.app.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.testing.SetClock;
import java.time.Instant;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentencesTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
            2026-11-24T12:10:00Z, in 2 h 10 min
            2026-11-24T10:45:00Z, in 45 min
            2026-11-24T10:00:20Z, now
            2026-11-24T09:48:00Z, 12 min ago
            2026-11-24T08:30:00Z, 1 h 30 min ago
            2026-11-19T09:00:00Z, 5 days ago
            2026-11-27T22:00:00Z, 'Fri 27, 22:00'
            """)
    void saysWhenSomethingIsDue(String due, String expected) {
        assertThat(Sentences.due(Instant.parse(due), SetClock.at("2026-11-24T10:00:00Z")))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            6.33 EUR, 6.33_EUR
            'at least 6.33 EUR, 4.10 / 1 kg', 'at least 6.33_EUR, 4.10 / 1_kg'
            28 % of 120 ml, 28_% of 120_ml
            12 lots end, 12 lots end
            """)
    void keepsAFigureAndItsUnitOnOneLine(String words, String kept) {
        assertThat(Sentences.kept(words)).isEqualTo(kept.replace('_', '\u00a0'));
    }

    @Test
    void saysWhatFailedEvenWithoutAMessage() {
        assertThat(Sentences.of(new IllegalStateException("The shelf is gone.")))
                .isEqualTo("The shelf is gone.");
        assertThat(Sentences.of(new ArithmeticException())).isEqualTo("ArithmeticException");
    }

    @Test
    void writesKeysForPeopleAndLeavesTypingAlone() {
        assertThat(KeyText.of(SWT.CTRL | SWT.SHIFT | 'z')).isEqualTo("Ctrl+Shift+Z");
        assertThat(KeyText.of(SWT.F6)).isEqualTo("F6");
        assertThat(KeyText.of(SWT.DEL)).isEqualTo("Delete");
        assertThat(KeyText.safeEverywhere(SWT.DEL)).isFalse();
        assertThat(KeyText.safeEverywhere(SWT.CTRL | 'N')).isTrue();
        assertThat(KeyText.safeEverywhere(SWT.F9)).isTrue();
    }
}
