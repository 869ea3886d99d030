package etamine.costing.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CostRowTest {
    private static final Currency EUR = Currency.getInstance("EUR");

    @Test
    void roundsMoneyOnlyForShowing() {
        CostRow row = row("4.125", false, Optional.of("18.00"));
        assertThat(row.costText()).isEqualTo("4.13");
        assertThat(row.cost().amount()).isEqualByComparingTo("4.125");
    }

    @Test
    void saysThatACostWithMissingPricesIsALowerBound() {
        assertThat(row("4.10", true, Optional.empty()).costText()).isEqualTo("at least 4.10");
    }

    @Test
    void leavesMenuFiguresEmptyForWhatIsNotOnTheMenu() {
        CostRow row = row("1.00", false, Optional.empty());
        assertThat(row.onMenu()).isFalse();
        assertThat(row.netText() + row.percentText() + row.contributionText()).isEmpty();
    }

    private static CostRow row(String cost, boolean lower, Optional<String> net) {
        Optional<Money> price = net.map(amount -> Money.of(amount, EUR));
        Money money = Money.of(cost, EUR);
        return new CostRow(
                "a", "A", money, "plate", price, price.map(p -> BigDecimal.TEN), price.map(p -> p.minus(money)), lower);
    }
}
