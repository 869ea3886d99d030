package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.testing.DisplayRule;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EntryFieldTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private static final Currency EUR = Currency.getInstance("EUR");
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 24);
    private Shell shell;

    @BeforeEach
    void openShell() {
        shell = DISPLAY.shell(400, 300);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            1 1/2 cup, 1.5 cup
            6 x 1 l,   6 l
            250g,      250 g
            1.5 kg,    1.5 kg
            """)
    void readsQuantitiesAsPeopleWriteThem(String typed, String expected) {
        QuantityField field = new QuantityField(shell);
        field.setText(typed);
        assertThat(field.value()).contains(Quantity.parse(expected));
        assertThat(field.problem()).isEmpty();
    }

    @Test
    void addsPoundsAndOunces() {
        QuantityField field = new QuantityField(shell);
        field.setText("2 lb 4 oz");
        assertThat(field.value().orElseThrow().toBase())
                .isEqualTo(Quantity.parse("36 oz").toBase());
    }

    @Test
    void saysWhyAQuantityCannotBeReadAndKeepsWhatWasTyped() {
        QuantityField field = new QuantityField(shell);
        field.setText("a few");
        assertThat(field.check()).isFalse();
        assertThat(field.text()).isEqualTo("a few");
        assertThat(sentence(field)).isEqualTo(field.problem().orElseThrow()).isNotBlank();
        field.setText("3 ea");
        assertThat(field.check()).isTrue();
        assertThat(sentence(field)).isEmpty();
    }

    @Test
    void tellsListenersEachNewValueAndThatThereIsNone() {
        QuantityField field = new QuantityField(shell);
        List<Optional<Quantity>> told = new ArrayList<>();
        var subscription = field.onChange(told::add);
        field.setText("250 g");
        field.setText("250 g ");
        field.setText("nothing here");
        subscription.close();
        field.setText("1 kg");
        assertThat(told).containsExactly(Optional.of(Quantity.parse("250 g")), Optional.empty());
    }

    @Test
    void readsBackTheQuantityItShows() {
        QuantityField field = new QuantityField(shell);
        Quantity third = Quantity.parse("1/3 cup");
        field.set(third);
        assertThat(field.value()).contains(third);
    }

    @Test
    void asksForWhatIsRequired() {
        EntryField<Quantity> field = new QuantityField(shell).required();
        assertThat(field.check()).isFalse();
        assertThat(sentence(field)).isEqualTo("Fill this in.");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            12.50;     12.50
            12,50;     12.50
            1 200;     1200
            4 EUR;     4
            \u20ac 3.1; 3.1
            """, delimiter = ';')
    void readsMoneyWithPointOrComma(String typed, String expected) {
        MoneyField field = new MoneyField(shell, EUR);
        field.setText(typed);
        assertThat(field.value().map(Money::amount).orElseThrow()).isEqualByComparingTo(expected);
    }

    @Test
    void refusesMoneyThatIsNotANumber() {
        MoneyField field = new MoneyField(shell, EUR);
        field.setText("1.2.3");
        assertThat(field.value()).isEmpty();
        assertThat(field.problem()).contains("Write an amount such as 12.50.");
    }

    @Test
    void showsMoneyWithAllDigitsItHas() {
        MoneyField field = new MoneyField(shell, EUR);
        field.set(Money.of(new BigDecimal("4.1"), EUR));
        assertThat(field.text()).isEqualTo("4.10");
        field.set(Money.of(new BigDecimal("0.0125"), EUR));
        assertThat(field.text()).isEqualTo("0.0125");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            2026-11-27, 2026-11-27
            12-01,      2026-12-01
            27,         2026-11-27
            """)
    void completesShortDays(String typed, LocalDate expected) {
        DayField field = new DayField(shell, () -> TODAY);
        field.setText(typed);
        assertThat(field.value()).contains(expected);
    }

    @Test
    void stepsFromDayToDayWithTheArrows() {
        DayField field = new DayField(shell, () -> TODAY);
        DISPLAY.key(field.control(), SWT.ARROW_UP, '\0', 0);
        assertThat(field.text()).isEqualTo("2026-11-25");
        DISPLAY.key(field.control(), SWT.PAGE_UP, '\0', 0);
        DISPLAY.key(field.control(), SWT.ARROW_DOWN, '\0', 0);
        assertThat(field.value()).contains(LocalDate.of(2026, 12, 1));
        String before = field.text();
        DISPLAY.key(field.control(), SWT.PAGE_DOWN, '\0', SWT.MOD1);
        assertThat(field.text()).as("a page key of something else").isEqualTo(before);
    }

    @Test
    void refusesDaysThatDoNotExist() {
        DayField field = new DayField(shell, () -> TODAY);
        field.setText("2026-02-30");
        assertThat(field.problem()).contains("Write a day as year-month-day, such as 2026-11-24.");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            0.74,  0.74,
            '1,5', ,     Write a number from 0 to 1.
            0.123, ,     Write at most 2 decimals.
            ten,   ,     Write a number from 0 to 1.
            """)
    void holdsNumbersWithinTheirLimits(String typed, BigDecimal value, String problem) {
        NumberField field = new NumberField(shell, "0", "1", 2);
        field.setText(typed);
        assertThat(field.value()).isEqualTo(Optional.ofNullable(value));
        assertThat(field.problem()).isEqualTo(Optional.ofNullable(problem));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            celeriac,        celeriac
            CREAM,           cream
            sour,            sour-cream
            """)
    void choosesByNameOrByTheOnlyMatch(String typed, String id) {
        ChoiceField field = choices();
        field.setText(typed);
        assertThat(field.id()).contains(id);
    }

    @Test
    void asksForMoreWhenSeveralChoicesFit() {
        ChoiceField field = choices();
        field.setText("cre");
        assertThat(field.problem()).contains("Several fit; choose one of the list.");
        field.setText("leek");
        assertThat(field.problem()).contains("Nothing here is called that.");
    }

    @Test
    void choosesByIdAndFollowsNewChoices() {
        ChoiceField field = choices();
        field.choose("sour-cream");
        assertThat(field.text()).isEqualTo("Sour cream");
        field.setChoices(List.of(new Choice("new", "Sour cream")));
        assertThat(field.id()).contains("new");
    }

    private ChoiceField choices() {
        return new ChoiceField(
                shell,
                List.of(
                        new Choice("celeriac", "Celeriac"),
                        new Choice("cream", "Cream"),
                        new Choice("sour-cream", "Sour cream")));
    }

    private static String sentence(EntryField<?> field) {
        return ((Label) field.getChildren()[1]).getText();
    }
}
