package etamine.inventory.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Explanation;
import etamine.inventory.Incoming;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.ItemCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ValuationTest {
    private final Shelf shelf = Shelf.withPlaces();

    /** The five events of OpenStax, Principles of Accounting, vol. 1 (2019), 10.2, perpetual inventory. */
    private void year() {
        shelf.day("2026-07-01");
        shelf.room.open(List.of(new Incoming(
                "jacket",
                "dry",
                Quantity.parse("150 ea"),
                Optional.empty(),
                Optional.of(UnitPrice.of("21", "1 ea")),
                "")));
        shelf.day("2026-07-05");
        shelf.take(MovementKind.SOLD, "jacket", "120 ea");
        shelf.day("2026-07-10");
        shelf.receive("jacket", "225 ea", "", "27", "1 ea");
        shelf.day("2026-07-15");
        shelf.take(MovementKind.SOLD, "jacket", "180 ea");
        shelf.day("2026-07-25");
        shelf.receive("jacket", "210 ea", "", "33", "1 ea");
    }

    private Ratio closingAtAverage() {
        UnitPrice average = shelf.paid.average("jacket").orElseThrow().price();
        return average.cost(shelf.line("jacket").onHand());
    }

    @Test
    void valuesAtWhatTheLotsCostFirstInFirstOut() {
        year();
        Money closing = shelf.line("jacket").value().orElseThrow();
        assertThat(closing).hasToString("8955.00"); // OpenStax 2019, 10.3, perpetual FIFO - published
        assertThat(new BigDecimal("16155").subtract(closing.amount())).isEqualByComparingTo("7200"); // published
        assertThat(shelf.line("jacket").onHand()).isEqualTo(Quantity.parse("285 ea")); // published
    }

    @Test
    void movesTheAverageWithEachReceipt() {
        year();
        Ratio closing = closingAtAverage();
        // OpenStax 2019, 10.3, perpetual moving average; the exact rows - computed (the book rounds 26.29 and 31.24).
        assertThat(closing.toDecimal(2, RoundingMode.HALF_UP)).isEqualByComparingTo("8902.06");
        assertThat(Ratio.of(16155).minus(closing).toDecimal(2, RoundingMode.HALF_UP))
                .isEqualByComparingTo("7252.94");
        assertThat(shelf.paid
                        .average("jacket")
                        .orElseThrow()
                        .price()
                        .in(Unit.EA)
                        .amount())
                .isEqualByComparingTo("31.2353"); // 31.235294 - computed
    }

    @Test
    void doesNotAverageOverTheWholePeriod() {
        year();
        // The periodic average (27.615385, closing 7,870.38 - computed) is another method.
        assertThat(closingAtAverage().toDecimal(2, RoundingMode.HALF_UP)).isNotEqualByComparingTo("7870.38");
    }

    @Test
    void valuesTheShortSetBothWays() {
        // Inputs OpenStax 2019, 10.3, exercise - published; answers computed.
        shelf.day("2026-07-01");
        shelf.room.open(List.of(new Incoming(
                "jacket",
                "dry",
                Quantity.parse("800 ea"),
                Optional.empty(),
                Optional.of(UnitPrice.of("50", "1 ea")),
                "")));
        shelf.day("2026-07-02");
        shelf.receive("jacket", "600 ea", "", "52", "1 ea");
        shelf.day("2026-07-03");
        shelf.take(MovementKind.SOLD, "jacket", "400 ea");
        shelf.take(MovementKind.SOLD, "jacket", "350 ea");
        assertThat(shelf.line("jacket").value().orElseThrow()).hasToString("33700.00");
        assertThat(closingAtAverage().toDecimal(2, RoundingMode.HALF_UP)).isEqualByComparingTo("33057.14");
        assertThat(Ratio.of(71200).minus(closingAtAverage()).toDecimal(2, RoundingMode.HALF_UP))
                .isEqualByComparingTo("38142.86");
    }

    @Test
    void quotesTheLastPriceThatStands() {
        year();
        assertThat(shelf.paid.last("jacket").orElseThrow().price()).isEqualTo(UnitPrice.of("33", "1 ea"));
        String latest = shelf.room.movements("jacket", 1).get(0).id();
        shelf.room.reverse(latest, "wrong delivery");
        assertThat(shelf.paid.last("jacket").orElseThrow().price()).isEqualTo(UnitPrice.of("27", "1 ea"));
        assertThat(shelf.line("jacket").onHand()).isEqualTo(Quantity.parse("75 ea"));
    }

    @Test
    void fallsBackOnAPriceWhereNoCostIsKnownAndSaysSo() {
        shelf.receive("cream", "2 l", "", "", "");
        assertThat(shelf.line("cream").value()).isEmpty();
        assertThat(shelf.line("cream").valuedBy()).isEqualTo("no cost and no price known");
        shelf.stock.prices = List.of(offer("cream", UnitPrice.of("24.60", "6 l")));
        assertThat(shelf.line("cream").value().orElseThrow()).hasToString("8.20");
        assertThat(shelf.line("cream").valuedBy()).isEqualTo("offer D-104");
    }

    @Test
    void valuesWhatIsMadeAtWhatMakingItCosts() {
        shelf.receive("cream", "2 l", "", "", "");
        shelf.stock.costs = new MadeCost(new ItemCost("cream", UnitPrice.of("3.00", "1 l"), false, "made by churning"));
        assertThat(shelf.line("cream").value().orElseThrow()).hasToString("6.00");
        assertThat(shelf.line("cream").valuedBy()).isEqualTo("at least made by churning");
    }

    /** Costs that know a single item. */
    private record MadeCost(ItemCost cost) implements Costs {
        @Override
        public Optional<RecipeCost> recipe(String id) {
            return Optional.empty();
        }

        @Override
        public Map<String, RecipeCost> recipes() {
            return Map.of();
        }

        @Override
        public Optional<ItemCost> item(String id) {
            return id.equals(cost.item()) ? Optional.of(cost) : Optional.empty();
        }

        @Override
        public Optional<Explanation> explain(String recipe) {
            return Optional.empty();
        }
    }

    private static PriceSource offer(String item, UnitPrice price) {
        return new PriceSource() {
            @Override
            public String id() {
                return "offer";
            }

            @Override
            public String label() {
                return "Current offer";
            }

            @Override
            public int rank() {
                return 10;
            }

            @Override
            public Optional<PriceQuote> quote(String asked) {
                return asked.equals(item)
                        ? Optional.of(new PriceQuote(item, price, id(), "offer D-104", Optional.<LocalDate>empty()))
                        : Optional.empty();
            }
        };
    }

    @Test
    void remembersWhatWasPaidAndTheAverageOfEveryDay() {
        year();
        PriceSource last = new LastPaidPrice(shelf.paid);
        PriceSource average = new AveragePrice(shelf.paid);
        assertThat(last.history("jacket"))
                .extracting(quote ->
                        quote.asOf().orElseThrow() + " " + quote.price().amount())
                .containsExactly("2026-07-10 27", "2026-07-25 33");
        assertThat(last.quote("jacket", LocalDate.of(2026, 7, 24)).orElseThrow().price())
                .isEqualTo(UnitPrice.of("27", "1 ea"));
        assertThat(last.quote("jacket", LocalDate.of(2026, 7, 9))).isEmpty();
        // OpenStax 2019, 10.3, perpetual average: (30 x 21 + 225 x 27) / 255, then (75 of them + 210 x 33) / 285 -
        // computed
        assertThat(average.history("jacket"))
                .extracting(quote -> quote.asOf().orElseThrow() + " "
                        + quote.price().amount().setScale(4, RoundingMode.HALF_UP))
                .containsExactly("2026-07-01 21.0000", "2026-07-10 26.2941", "2026-07-25 31.2353");
        assertThat(average.quote("jacket", LocalDate.of(2026, 7, 12))
                        .orElseThrow()
                        .text())
                .isEqualTo("moving average up to 2026-07-10");
    }
}
