package etamine.costing.internal.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Progress;
import etamine.base.verb.Outcome;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.costing.Days;
import etamine.measures.UnitPrice;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CallWordsTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-11-24");
    private static final Days KNOWN = new Days(LocalDate.parse("2026-09-29"), LocalDate.parse("2026-11-22"));

    private static CallWords words(String... options) {
        Map<String, String> given = new HashMap<>();
        for (int i = 0; i < options.length; i += 2) {
            given.put(options[i], options[i + 1]);
        }
        return new CallWords(new VerbCall(List.of(), given, "volatile", Path.of(""), Progress.unseen()));
    }

    private static Days days(String... options) throws VerbException {
        return words(options).days(() -> Optional.of(KNOWN), TODAY);
    }

    @Test
    void takesTheDaysThatAreNotGivenFromTheSales() throws VerbException {
        assertThat(days()).isEqualTo(KNOWN);
        assertThat(days("--from", "2026-11-01")).hasToString("2026-11-01 to 2026-11-22");
        assertThat(days("--to", "2026-10-31")).hasToString("2026-09-29 to 2026-10-31");
        assertThat(days("--from", "2026-12-01")).hasToString("2026-12-01");
        assertThat(words().days(Optional::empty, TODAY)).hasToString("2026-11-24");
    }

    @Test
    void refusesDaysThatEndBeforeTheyBegin() {
        assertThatThrownBy(() -> days("--from", "2026-11-02", "--to", "2026-11-01"))
                .isInstanceOf(VerbException.class)
                .hasMessageContaining("exchange the two");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "tomorrow", "2026-02-30", "-0001-01-01", "+99999-01-01", "9999-12-31"})
    void refusesWhatIsNoDay(String text) {
        assertThatThrownBy(() -> days("--from", text))
                .isInstanceOfSatisfying(
                        VerbException.class,
                        wrong -> assertThat(wrong.outcome()).isEqualTo(Outcome.WRONG_CALL));
    }

    @Test
    void readsPricesPerKgOrPerWhatIsSaid() throws VerbException {
        assertThat(words("--dealer", "12.40").price("--dealer")).contains(UnitPrice.of("12.40", "1 kg"));
        assertThat(words("--dealer", "5.60 / lb").price("--dealer")).contains(UnitPrice.of("5.60", "1 lb"));
        assertThat(words("--dealer", "10.60 per 2.5 kg").price("--dealer")).contains(UnitPrice.of("10.60", "2.5 kg"));
        assertThatThrownBy(() -> words("--dealer", "cheap").price("--dealer")).hasMessageContaining("12.40 (a kg)");
        assertThatThrownBy(() -> words("--dealer", "-1").price("--dealer")).hasMessageContaining("less than zero");
    }

    @Test
    void readsNumbersAsPeopleWriteThem() throws VerbException {
        assertThat(words("--food-cost", "27,5 %").number("--food-cost").orElseThrow())
                .isEqualByComparingTo("27.5");
        assertThatThrownBy(() -> words("--food-cost", "1e9").number("--food-cost"))
                .hasMessageContaining("wants a number");
    }
}
