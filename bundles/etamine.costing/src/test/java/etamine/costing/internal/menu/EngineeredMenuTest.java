package etamine.costing.internal.menu;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.costing.Days;
import etamine.costing.MenuAnalysis.Comparison;
import etamine.costing.MenuClass;
import etamine.costing.MenuReport;
import etamine.costing.internal.larder.Larder;
import etamine.costing.internal.larder.Sales;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EngineeredMenuTest {
    private final Larder larder = new Larder();
    private final Sales sales = new Sales();

    private EngineeredMenu menu() {
        EngineeredMenu menu = new EngineeredMenu(larder.costs(), larder);
        menu.recipes = larder.recipeList;
        menu.diary = sales;
        return menu;
    }

    private MenuReport all() {
        return menu().report(Optional.empty(), Comparison.WITHIN_KIND, Set.of());
    }

    /** An item at a cost and a net price, sold so often. */
    private void offer(String id, long sold, String cost, String price) {
        larder.bought(id + "-goods", cost, "1 ea")
                .recipe(id)
                .uses("1 ea", id + "-goods")
                .makes("1 portion", id)
                .sold(price, "0", "0")
                .done();
        if (sold > 0) {
            sales.sold("2026-11-20", id, sold);
        }
    }

    private static Map<String, MenuClass> classes(MenuReport report) {
        return report.groups().stream()
                .flatMap(group -> group.items().stream())
                .collect(Collectors.toMap(MenuReport.Item::recipe, MenuReport.Item::standing));
    }

    /**
     * The worksheet in P. R. Dittmer and J. D. Keefe, Principles of Food, Beverage, and Labor Cost Controls, ch. 11, by the
     * method of M. L. Kasavana and D. I. Smith (1982) - secondary.
     */
    @Nested
    class Worksheet {
        private MenuReport.Group group;

        @BeforeEach
        void fill() {
            offer("gs", 72, "4.65", "14.45");
            offer("steak", 130, "5.35", "18.95");
            offer("seafood", 94, "7.25", "22.50");
            offer("tofu", 154, "4.20", "14.45");
            offer("pork", 125, "6.90", "16.45");
            group = all().groups().get(0);
        }

        @ParameterizedTest
        @CsvSource(textBlock = """
                        gs,      12.52, 9.80,  334.80, 1040.40, 705.60,  false, false, DOG
                        steak,   22.61, 13.60, 695.50, 2463.50, 1768.00, true,  true,  STAR
                        seafood, 16.35, 15.25, 681.50, 2115.00, 1433.50, true,  true,  STAR
                        tofu,    26.78, 10.25, 646.80, 2225.30, 1578.50, false, true,  PLOWHORSE
                        pork,    21.74, 9.55,  862.50, 2056.25, 1193.75, false, true,  PLOWHORSE
                        """)
        void hasTheLinesOfTheWorksheet(
                String id,
                BigDecimal share,
                String leaves,
                String cost,
                String revenue,
                String inAll,
                boolean margin,
                boolean popular,
                MenuClass standing) {
            MenuReport.Item item = group.items().stream()
                    .filter(one -> one.recipe().equals(id))
                    .findFirst()
                    .orElseThrow();
            assertThat(item.sharePercent()).isEqualTo(share);
            assertThat(item.contribution()).hasToString(leaves);
            assertThat(item.totalCost()).hasToString(cost);
            assertThat(item.totalRevenue()).hasToString(revenue);
            assertThat(item.totalContribution()).hasToString(inAll);
            assertThat(item.highMargin()).isEqualTo(margin);
            assertThat(item.popular()).isEqualTo(popular);
            assertThat(item.standing()).isEqualTo(standing);
        }

        @Test
        void addsUpToItsTotals() {
            assertThat(group.sold()).isEqualTo(575);
            assertThat(group.totalRevenue()).hasToString("9900.45");
            assertThat(group.totalContribution()).hasToString("6679.35");
            assertThat(group.averageContribution().rounded()).hasToString("11.62");
            assertThat(group.popularityCutPercent()).isEqualTo("14.00");
            assertThat(group.foodCostPercent()).contains(new BigDecimal("32.53"));
        }

        /** The printed total of 3,220.8 is a misprint: the column adds up to 3,221.10 - computed. */
        @Test
        void doesNotRepeatTheMisprintedTotal() {
            assertThat(group.totalCost()).hasToString("3221.10");
        }

        @Test
        void putsWhatEarnsMostFirst() {
            assertThat(group.items())
                    .extracting(MenuReport.Item::recipe)
                    .containsExactly("steak", "tofu", "seafood", "pork", "gs");
        }
    }

    /** Seven of a hundred is exactly 70 % of a tenth: not above it. */
    @Test
    void takesAShareOnTheCutAsLow() {
        offer("on", 7, "1.00", "5.00");
        offer("over", 8, "1.00", "5.00");
        for (int i = 0; i < 7; i++) {
            offer("other-" + i, 10, "1.00", "5.00");
        }
        offer("rest", 15, "1.00", "5.00");
        MenuReport.Group group = all().groups().get(0);
        assertThat(group.sold()).isEqualTo(100);
        assertThat(group.popularityCutPercent()).isEqualTo("7.00");
        assertThat(group.items())
                .filteredOn(item -> !item.popular())
                .extracting(MenuReport.Item::recipe)
                .containsExactly("on");
    }

    @Test
    void takesAMarginOnTheAverageAsLow() {
        offer("one", 5, "1.00", "4.00");
        offer("two", 5, "3.00", "6.00");
        assertThat(all().groups().get(0).averageContribution()).hasToString("3.00");
        assertThat(classes(all()).values()).containsOnly(MenuClass.PLOWHORSE);
    }

    @Test
    void countsWhatIsOnTheMenuThoughNobodyOrderedIt() {
        offer("liked", 20, "2.00", "8.00");
        offer("other", 20, "2.00", "9.00");
        offer("forgotten", 0, "2.00", "20.00");
        MenuReport.Group group = all().groups().get(0);
        assertThat(group.popularityCutPercent()).isEqualTo("23.33");
        assertThat(classes(all())).containsEntry("forgotten", MenuClass.PUZZLE);
    }

    @Test
    void comparesPlatesWithPlatesAndDrinksWithDrinks() {
        offer("duck", 10, "6.00", "24.00");
        offer("hake", 10, "5.00", "22.00");
        offer("glass", 30, "1.20", "6.00");
        larder.asDrink("glass");
        MenuReport apart = all();
        assertThat(apart.groups()).extracting(MenuReport.Group::name).containsExactly("plates", "drinks");
        assertThat(apart.groups().get(0).averageContribution()).hasToString("17.50");
        assertThat(classes(apart)).containsEntry("duck", MenuClass.STAR).containsEntry("glass", MenuClass.PLOWHORSE);
        assertThat(apart.notes()).anyMatch(note -> note.startsWith("Plates are compared with plates"));

        MenuReport together = menu().report(Optional.empty(), Comparison.TOGETHER, Set.of());
        assertThat(together.groups()).extracting(MenuReport.Group::name).containsExactly("all");
        assertThat(together.groups().get(0).sold()).isEqualTo(50);
    }

    @Test
    void comparesOnlyWhatItIsAskedFor() {
        offer("duck", 10, "6.00", "24.00");
        offer("hake", 30, "5.00", "22.00");
        offer("soup", 60, "1.00", "7.00");
        MenuReport mains = menu().report(Optional.empty(), Comparison.WITHIN_KIND, Set.of("duck", "hake"));
        assertThat(mains.groups().get(0).sold()).isEqualTo(40);
        assertThat(mains.leftOut()).isEmpty();
        assertThatThrownBy(() -> menu().report(Optional.empty(), Comparison.TOGETHER, Set.of("duckk")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Did you mean duck?");
    }

    @Test
    void looksAtTheDaysAsked() {
        offer("duck", 0, "6.00", "24.00");
        sales.sold("2026-11-19", "duck", 4).sold("2026-11-20", "duck", 8).sold("2026-11-21", "duck", 16);
        Days day = new Days(LocalDate.parse("2026-11-20"), LocalDate.parse("2026-11-20"));
        MenuReport report = menu().report(Optional.of(day), Comparison.WITHIN_KIND, Set.of());
        assertThat(report.groups().get(0).sold()).isEqualTo(8);
        assertThat(menu().sold()).contains(new Days(LocalDate.parse("2026-11-19"), LocalDate.parse("2026-11-21")));
        assertThatThrownBy(() -> new Days(LocalDate.parse("2026-11-21"), LocalDate.parse("2026-11-20")))
                .hasMessageContaining("exchange the two");
    }

    @Test
    void saysWhatItLeavesOut() {
        offer("duck", 3, "6.00", "24.00");
        larder.bought("goods", "1.00", "1 ea")
                .recipe("unpriced")
                .uses("1 ea", "goods")
                .makes("1 portion", "unpriced")
                .done();
        sales.sold("2026-11-20", "unpriced", 2).sold("2026-11-20", "gone", 1);
        MenuReport report = all();
        assertThat(report.leftOut())
                .extracting(MenuReport.LeftOut::recipe)
                .containsExactlyInAnyOrder("gone", "unpriced");
        assertThat(report.groups().get(0).sold()).isEqualTo(3);
    }

    @Test
    void saysThatNothingWasSold() {
        offer("duck", 0, "6.00", "24.00");
        MenuReport report = all();
        assertThat(report.groups()).isEmpty();
        assertThat(report.days()).isEmpty();
        assertThat(report.notes()).anyMatch(note -> note.startsWith("Nothing was sold"));
        assertThat(menu().sold()).isEmpty();
    }

    @Test
    void saysThatNobodyKeepsSales() {
        offer("duck", 0, "6.00", "24.00");
        EngineeredMenu menu = menu();
        menu.diary = null;
        assertThat(menu.report(Optional.empty(), Comparison.WITHIN_KIND, Set.of())
                        .notes())
                .anyMatch(note -> note.contains("keeps sales"));
    }

    @Test
    void keepsAPriceOfNothingAndMarksMissingPrices() {
        offer("free", 5, "2.00", "0.00");
        larder.unpriced("truffle", "kg")
                .recipe("dear")
                .uses("5 g", "truffle")
                .makes("1 portion", "dear")
                .sold("20.00", "0", "0")
                .done();
        sales.sold("2026-11-20", "dear", 5);
        MenuReport.Group group = all().groups().get(0);
        assertThat(group.items().get(0).lowerBound()).isTrue();
        assertThat(group.items().get(1).foodCostPercent()).isEmpty();
        assertThat(group.items().get(1).contribution()).hasToString("-2.00");
    }

    @Test
    void saysWhatAveragesHide() {
        offer("duck", 3, "6.00", "24.00");
        assertThat(all().notes()).contains(MenuReport.CAUTION);
    }
}
