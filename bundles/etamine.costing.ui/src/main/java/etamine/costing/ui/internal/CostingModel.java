package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.base.Problem;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.measures.MeasureStyle;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.UnitPrice;
import etamine.widgets.StackBlocks;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What the costing bench shows, as text and parts. Safe on any thread. */
final class CostingModel {
    private final Costs costs;
    private final Items items;
    private final Kitchen kitchen;
    private final Supplier<Optional<Recipes>> recipes;

    CostingModel(Costs costs, Items items, Kitchen kitchen, Supplier<Optional<Recipes>> recipes) {
        this.costs = costs;
        this.items = items;
        this.kitchen = kitchen;
        this.recipes = recipes;
    }

    List<CostRow> rows() {
        return costs.recipes().values().stream()
                .map(this::row)
                .sorted(Comparator.comparing(CostRow::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    Optional<CostDetail> detail(String id) {
        return costs.recipe(id).map(this::detail);
    }

    private CostRow row(RecipeCost cost) {
        Optional<PlateCost> plate = cost.plate();
        Money shown = plate.map(PlateCost::cost).or(cost::portion).orElse(cost.batch());
        String each = plate.isPresent() ? "plate" : cost.portion().isPresent() ? "portion" : "batch";
        return new CostRow(
                cost.recipe(),
                name(cost.recipe()),
                shown,
                each,
                plate.map(PlateCost::net),
                plate.flatMap(PlateCost::foodCostPercent),
                plate.map(PlateCost::contribution),
                !cost.missing().isEmpty());
    }

    private CostDetail detail(RecipeCost cost) {
        String currency = kitchen.house().currency().getCurrencyCode();
        String title = name(cost.recipe()) + ": one batch costs "
                + (cost.missing().isEmpty() ? "" : "at least ") + cost.batch().rounded() + " " + currency;
        Explanation story =
                costs.explain(cost.recipe()).orElseGet(() -> Explanation.leaf(name(cost.recipe()), "", "removed"));
        return new CostDetail(
                title,
                blocks(cost),
                cost.lines().stream().map(this::line).toList(),
                cost.warnings().stream().map(Problem::text).toList(),
                story);
    }

    private List<StackBlocks.Block> blocks(RecipeCost cost) {
        return cost.lines().stream()
                .filter(line -> line.cost().isPresent())
                .sorted(Comparator.comparing(
                                (RecipeCost.Line line) -> line.cost().orElseThrow())
                        .reversed())
                .map(line -> block(line, cost.batch()))
                .toList();
    }

    private StackBlocks.Block block(RecipeCost.Line line, Money batch) {
        BigDecimal part = line.cost().orElseThrow().amount();
        String share = batch.signum() == 0
                ? ""
                : ", " + part.movePointRight(2).divide(batch.amount(), 0, RoundingMode.HALF_UP) + " %";
        return new StackBlocks.Block(
                items.name(line.item()),
                part.doubleValue(),
                line.cost().orElseThrow().rounded() + share);
    }

    private CostDetail.Line line(RecipeCost.Line line) {
        return new CostDetail.Line(
                line.item(),
                items.name(line.item()) + line.as().map(as -> ", " + as).orElse(""),
                text(line.quantity()),
                line.asPurchased().map(this::text).orElse("cannot be converted"),
                line.unitPrice().map(CostingModel::text).orElse("none"),
                line.cost().map(money -> money.rounded().toString()).orElse("missing"));
    }

    private String name(String recipe) {
        return recipes.get()
                .flatMap(known -> known.find(recipe))
                .map(Recipe::name)
                .orElse(recipe);
    }

    private String text(Quantity quantity) {
        MeasureStyle style = kitchen.house().measures();
        return QuantityText.format(quantity, style);
    }

    private static String text(UnitPrice price) {
        BigDecimal amount = price.amount().setScale(4, RoundingMode.HALF_UP).stripTrailingZeros();
        return amount.setScale(Math.max(2, amount.scale())).toPlainString() + " / " + price.per();
    }
}
