package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The list of plates and what stands behind each. Safe on any thread. */
final class PlatesModel {
    private final CostingParts parts;

    PlatesModel(CostingParts parts) {
        this.parts = parts;
    }

    List<PlateRow> rows() {
        return parts.costs().recipes().values().stream()
                .map(this::row)
                .sorted(Comparator.comparing(PlateRow::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    Optional<PlateDetail> detail(String id, List<PlateRow> all) {
        return parts.costs().recipe(id).map(cost -> new PlateOpened(parts, cost).detail(all));
    }

    /** Several plates side by side: what each leaves and why. */
    PlateDetail several(List<PlateRow> chosen, List<PlateRow> all) {
        List<String> why = new ArrayList<>();
        List<Explanation> stories = new ArrayList<>();
        for (PlateRow row : chosen) {
            detail(row.id(), all).filter(detail -> row.onMenu()).ifPresent(detail -> {
                why.add(row.name() + ": " + detail.why());
                stories.add(new Explanation(
                        row.name(),
                        row.contributionText(),
                        detail.why(),
                        List.of(),
                        detail.story().subject()));
            });
        }
        String title = chosen.size() + " recipes";
        Explanation story = Explanation.of(title, "", stories);
        return new PlateDetail(title, String.join("\n", why), List.of(), List.of(), List.of(), List.of(), story);
    }

    private PlateRow row(RecipeCost cost) {
        Optional<PlateCost> plate = cost.plate();
        Money shown = plate.map(PlateCost::cost).or(cost::portion).orElse(cost.batch());
        String each = plate.isPresent() ? "plate" : cost.portion().isPresent() ? "portion" : "batch";
        return new PlateRow(
                cost.recipe(),
                parts.recipeName(cost.recipe()),
                shown,
                each,
                !cost.complete(),
                plate.map(figures -> new PlateRow.OnMenu(
                        figures.net(), figures.foodCostPercent(), figures.contribution(), figures.target())),
                most(cost));
    }

    /** What most of the cost is, such as {@code Cream, 48 %}; empty when nothing has a cost. */
    private String most(RecipeCost cost) {
        return cost.lines().stream()
                .filter(line -> line.cost().filter(money -> money.signum() > 0).isPresent())
                .max(Comparator.comparing(line -> line.cost().orElseThrow()))
                .map(line -> parts.items().name(line.item()) + ", "
                        + share(line.cost().orElseThrow(), whole(cost)))
                .orElse("");
    }

    /** What shares are of: the plate with all that is added where a batch is one portion, else the batch. */
    static Money whole(RecipeCost cost) {
        boolean one = cost.portion().filter(cost.batch()::equals).isPresent();
        return one ? cost.plate().map(PlateCost::cost).orElse(cost.batch()) : cost.batch();
    }

    /** A part of a whole in whole percent. */
    static String share(Money part, Money whole) {
        if (whole.signum() == 0) {
            return Figures.NONE;
        }
        BigDecimal percent = part.amount().movePointRight(2).divide(whole.amount(), 0, RoundingMode.HALF_UP);
        return percent.toPlainString() + "\u00a0%";
    }
}
