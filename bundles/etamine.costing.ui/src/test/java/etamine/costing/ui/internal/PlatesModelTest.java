package etamine.costing.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlatesModelTest {
    private final SetParts desk = new SetParts();

    @Test
    void saysWhatMostOfACostIs() {
        assertThat(rows()).extracting(PlateRow::name).containsExactly("Soup", "Tart");
        assertThat(row("tart").most()).isEqualTo("Cream, 75\u00a0%");
        assertThat(row("tart").costText()).isEqualTo("2.00");
        assertThat(row("tart").contributionText()).isEqualTo("8.00");
    }

    @Test
    void saysWhichPlateLeavesLeastAndWhy() {
        assertThat(detail("soup").why())
                .isEqualTo("Leaves 4.00\u00a0EUR a cover: 5.00 net less 1.00 cost. The least of 2. Most of its cost:"
                        + " Leek, 100\u00a0%. Food cost 20.0\u00a0%.");
        assertThat(detail("tart").why()).contains("The second least of 2.");
    }

    @Test
    void setsSeveralPlatesSideBySide() {
        PlateDetail both = new PlatesModel(desk.parts()).several(rows(), rows());
        assertThat(both.title()).isEqualTo("2 recipes");
        assertThat(both.why()).startsWith("Soup: Leaves 4.00").contains("\nTart: Leaves 8.00");
        assertThat(both.story().parts()).extracting(part -> part.value()).containsExactly("4.00", "8.00");
    }

    @Test
    void marksAPlateOverItsTarget() {
        desk.costs.put(
                "tart",
                with(new PlateCost(
                        SetParts.money("2.00"),
                        SetParts.money("10.00"),
                        Optional.of(new BigDecimal("20.00")),
                        SetParts.money("8.00"),
                        PlateCost.Parts.of(SetParts.money("2.00")),
                        Optional.empty(),
                        Optional.of(new BigDecimal("18")))));
        assertThat(row("tart").doubtful()).isTrue();
        assertThat(row("soup").doubtful()).isFalse();
        assertThat(detail("tart").why()).contains("Food cost 20.0\u00a0%, over its target of 18\u00a0%.");
    }

    @Test
    void labelsBothQFactorsAndPackagingBelowTheLines() {
        PlateCost.Parts parts = new PlateCost.Parts(
                SetParts.money("2.00"), SetParts.money("0.04"), SetParts.money("0.30"), SetParts.money("0.10"));
        desk.costs.put(
                "tart",
                with(new PlateCost(
                        SetParts.money("2.44"),
                        SetParts.money("10.00"),
                        Optional.of(new BigDecimal("24.40")),
                        SetParts.money("7.56"),
                        parts,
                        Optional.of(SetParts.money("3.00")),
                        Optional.empty())));
        List<PlateDetail.Line> lines = detail("tart").lines();
        assertThat(lines)
                .extracting(PlateDetail.Line::name)
                .containsExactly("Cream", "Flour", "Q factor, percentage", "Q factor, amount", "Packaging and garnish");
        assertThat(lines).extracting(PlateDetail.Line::cost).containsExactly("1.50", "0.50", "0.04", "0.30", "0.10");
        assertThat(lines.get(3).source()).isEqualTo("for what accompanies every plate");
        assertThat(detail("tart").blocks()).hasSize(5);
        assertThat(detail("tart").why()).contains("Hands-on work 3.00, prime cost 5.44\u00a0EUR, 54\u00a0% of net.");
    }

    @Test
    void saysAtLeastWhereAPriceIsMissing() {
        RecipeCost tart = desk.costs.get("tart");
        desk.costs.put(
                "tart",
                new RecipeCost(
                        "tart",
                        tart.batch(),
                        List.of(),
                        tart.portion(),
                        tart.plate(),
                        List.of("butter"),
                        List.of(),
                        tart.lines()));
        assertThat(row("tart").costText()).isEqualTo("at least 2.00");
        assertThat(row("tart").contributionText()).isEqualTo("at most 8.00");
        assertThat(detail("tart").title()).isEqualTo("Tart: at least 2.00\u00a0EUR");
    }

    @Test
    void setsADrinkAtEachLevelBesideThePlate() {
        RecipeCost tart = desk.costs.get("tart");
        RecipeCost.WithDrink house = new RecipeCost.WithDrink(
                "white-glass",
                "house",
                SetParts.plateCost("1.20", "6.00"),
                SetParts.money("3.20"),
                SetParts.money("16.00"),
                Optional.of(new BigDecimal("20.00")),
                SetParts.money("12.80"),
                true);
        desk.costs.put(
                "tart",
                new RecipeCost(
                        "tart",
                        tart.batch(),
                        List.of(),
                        tart.portion(),
                        tart.plate(),
                        List.of(),
                        List.of(),
                        tart.lines(),
                        Optional.empty(),
                        List.of(house),
                        true));
        assertThat(detail("tart").pairs())
                .containsExactly(new PlateDetail.Pair(
                        "white-glass", "white-glass", "house", "1.20", "20.0\u00a0%", "6.00", "20.0\u00a0%", "12.80"));
    }

    private RecipeCost with(PlateCost plate) {
        RecipeCost tart = desk.costs.get("tart");
        return new RecipeCost(
                "tart",
                tart.batch(),
                List.of(),
                tart.portion(),
                Optional.of(plate),
                List.of(),
                List.of(),
                tart.lines());
    }

    private List<PlateRow> rows() {
        return new PlatesModel(desk.parts()).rows();
    }

    private PlateRow row(String id) {
        return rows().stream().filter(row -> row.id().equals(id)).findFirst().orElseThrow();
    }

    private PlateDetail detail(String id) {
        return new PlatesModel(desk.parts()).detail(id, rows()).orElseThrow();
    }
}
