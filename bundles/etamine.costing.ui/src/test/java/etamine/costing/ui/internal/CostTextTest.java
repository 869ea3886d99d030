package etamine.costing.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.costing.CostRules;
import etamine.costing.DatedPrice;
import etamine.costing.Moved;
import etamine.costing.PriceRounding;
import etamine.measures.Money;
import etamine.measures.UnitPrice;
import etamine.testing.SetKitchen;
import etamine.widgets.ChangeBars;
import etamine.widgets.TimeChart;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CostTextTest {
    private static final LocalDate SINCE = LocalDate.of(2026, 10, 27);
    private final SetParts desk = new SetParts();

    @Test
    void writesFiguresAsPeopleSayThem() {
        Figures figures = new Figures(SetKitchen.at("2026-11-24T09:00:00Z"));
        assertThat(Figures.money(SetParts.money("-0.126"))).isEqualTo("\u22120.13");
        assertThat(Figures.change(SetParts.money("0.126"))).isEqualTo("+0.13");
        assertThat(Figures.change(SetParts.money("0.001"))).isEqualTo("0.00");
        assertThat(Figures.price(UnitPrice.of("34.0000", "1 kg"))).isEqualTo("34.00\u00a0/\u00a0kg");
        assertThat(Figures.price(UnitPrice.of("25.8", "3 kg"))).isEqualTo("25.80\u00a0/\u00a03\u00a0kg");
        assertThat(Figures.percentAsWritten(new BigDecimal("13.50"))).isEqualTo("13.5\u00a0%");
        assertThat(figures.day(LocalDate.of(2026, 11, 3))).isEqualTo("Tue\u00a03\u00a0Nov");
        assertThat(figures.day(LocalDate.of(2025, 11, 3))).isEqualTo("3\u00a0Nov\u00a02025");
    }

    @Test
    void takesAChangeApartIntoBarsThatAddUp() {
        desk.moved = new Moved(SINCE, List.of(), List.of(tart()));
        ChangesModel model = new ChangesModel(desk.parts());
        ChangesModel.Since since = model.read(SINCE);
        List<ChangeBars.Row> bars = model.bars(since.plates().get(0), SINCE);
        assertThat(bars)
                .extracting(ChangeBars.Row::label)
                .containsExactly("On Tue\u00a027\u00a0Oct", "Prices", "Yields", "Portions", "Recipe", "Now");
        double changes = bars.stream()
                .filter(row -> !row.whole())
                .mapToDouble(ChangeBars.Row::value)
                .sum();
        assertThat(bars.get(0).value() + changes)
                .isEqualTo(bars.get(5).value(), org.assertj.core.api.Assertions.within(1e-9));
        assertThat(model.sentence(since))
                .isEqualTo("No price moved since Tue\u00a027\u00a0Oct, 1 plate costs"
                        + " something else; 1 is over the food-cost target.");
        assertThat(model.causes(since.plates().get(0)).get(0).amountText()).isEqualTo("+0.30");
    }

    @Test
    void saysWhenNothingHasChanged() {
        ChangesModel model = new ChangesModel(desk.parts());
        assertThat(model.sentence(model.read(SINCE)))
                .isEqualTo("No price and no recipe has changed since Tue\u00a027\u00a0Oct.");
    }

    @Test
    void drawsAPriceFromItsDayUntilToday() {
        desk.prices = List.of(
                new DatedPrice(SINCE, UnitPrice.of("4.10", "1 l"), "offer", "offer D-104"),
                new DatedPrice(SINCE.plusDays(14), UnitPrice.of("4.67", "1 l"), "offer", "offer D-105"));
        TimeChart.Chart chart = new ChangesModel(desk.parts()).course("cream");
        assertThat(chart.title()).isEqualTo("Cream, EUR / l");
        List<TimeChart.Spot> spots = chart.lines().get(0).spots();
        assertThat(spots).extracting(TimeChart.Spot::value).containsExactly(4.10, 4.67, 4.67);
        assertThat(spots.get(2).day()).isEqualTo(LocalDate.of(2026, 11, 24));
    }

    @Test
    void asksForAPriceAtTheHousesTarget() {
        desk.rules = CostRules.unset().withTarget(Optional.of(new BigDecimal("28")));
        PriceModel model = new PriceModel(desk.parts());
        assertThat(model.start(Optional.of("tart"), PriceModel.Way.FOOD_COST)).isEqualByComparingTo("28");
        assertThat(model.cost("tart")).contains(SetParts.money("2.00"));
        assertThat(model.tax(Optional.empty())).isEqualByComparingTo("10");
        PriceModel.Asked asked = new PriceModel.Asked(
                Optional.of("tart"),
                SetParts.money("2.00"),
                PriceModel.Way.FOOD_COST,
                new BigDecimal("28"),
                BigDecimal.TEN,
                true,
                PriceRounding.Way.UP);
        assertThat(model.rows(model.advise(asked)))
                .extracting(row -> row.value())
                .containsExactly("10.00\u00a0EUR", "11.00\u00a0EUR", "10.45\u00a0EUR", "19.1\u00a0%", "8.45\u00a0EUR");
        model.write("tart", new BigDecimal("11.50"));
        assertThat(desk.accepted).hasSize(1);
    }

    @Test
    void readsEndingsAndRatesAsTheyAreTyped() {
        assertThat(RulesText.readEndings("50 .95, 0.00".replace(", ", " ")))
                .containsExactly(new BigDecimal("0.50"), new BigDecimal("0.95"), new BigDecimal("0.00"));
        assertThat(RulesText.readStations("cold larder 15.50\nsauce: 17"))
                .isEqualTo(Map.of("cold larder", new BigDecimal("15.50"), "sauce", new BigDecimal("17")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            1.50 | -     | no ending of a price
            x    | -     | no ending of a price
            -    | sauce | what an hour there costs
            -    | 16.50 | what an hour there costs
            """)
    void saysWhatIsWrongWithRules(String endings, String stations, String sentence) {
        assertThat(RulesText.problem(endings == null ? "" : endings, stations == null ? "" : stations)
                        .orElse(""))
                .contains(sentence);
    }

    private static Moved.PlateMove tart() {
        return new Moved.PlateMove(
                "tart",
                SetParts.money("2.00"),
                SetParts.money("2.25"),
                new Moved.Effects(money("0.30"), money("-0.05"), money("0.00"), money("0.00")),
                List.of(new Moved.Cause(Moved.Kind.PRICE, "cream", Optional.of(money("0.30")), "4.10 to 4.67 a litre")),
                false,
                Optional.empty(),
                Optional.of(new BigDecimal("22.50")),
                Optional.of(new BigDecimal("22")));
    }

    private static Money money(String amount) {
        return SetParts.money(amount);
    }
}
