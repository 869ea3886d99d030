package etamine.costing.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.MeasureStyle;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.UnitPrice;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** Tells how a recipe's cost comes about, down to the prices; made things open into their own recipes. */
final class CostStory {
    private static final int DEPTH = 5;

    private final CostState state;
    private final CostReport report;
    private final Currency currency;
    private final MeasureStyle style;

    CostStory(CostState state, Currency currency, MeasureStyle style) {
        this.state = state;
        this.report = new CostReport(state, currency);
        this.currency = currency;
        this.style = style;
    }

    Explanation of(CompiledRecipe compiled) {
        return recipe(compiled, DEPTH);
    }

    private Explanation recipe(CompiledRecipe compiled, int depth) {
        RecipeCost cost = report.of(compiled);
        List<Explanation> parts = new ArrayList<>();
        cost.plate().ifPresent(plate -> {
            parts.add(Explanation.leaf("Plate cost with Q factor", text(plate.cost()), ""));
            parts.add(Explanation.leaf("Net price", text(plate.net()), "menu price without tax"));
            plate.foodCostPercent()
                    .ifPresent(
                            percent -> parts.add(Explanation.leaf("Food cost", percent + " %", "cost over net price")));
            parts.add(Explanation.leaf("Contribution", text(plate.contribution()), "net price less cost"));
        });
        cost.portion().ifPresent(portion -> parts.add(Explanation.leaf("One portion", text(portion), "")));
        cost.lines().forEach(line -> parts.add(line(line, depth)));
        cost.makes().forEach(made -> parts.add(made(made)));
        cost.warnings().forEach(warning -> parts.add(Explanation.leaf(warning.text(), "", "look at this")));
        String value = (cost.missing().isEmpty() ? "" : "at least ") + text(cost.batch());
        Recipe recipe = compiled.recipe();
        return Explanation.of(recipe.name() + ", one batch", value, parts).about(new Subject("recipe", recipe.id()));
    }

    private Explanation line(RecipeCost.Line line, int depth) {
        Item item = state.items().get(line.item());
        String name = item == null ? line.item() : item.name();
        String title = name + line.as().map(as -> ", " + as).orElse("") + ", " + text(line.quantity());
        String source = line.asPurchased()
                        .filter(bought -> !bought.equals(line.quantity()))
                        .map(bought -> text(bought) + " as purchased, ")
                        .orElse("")
                + line.unitPrice().map(price -> text(price) + ", ").orElse("")
                + line.source();
        List<Explanation> below = state.makerOf(line.item())
                .filter(maker -> depth > 1)
                .flatMap(maker -> state.recipe(maker.id()))
                .map(maker -> List.of(recipe(maker, depth - 1)))
                .orElse(List.of());
        String value = line.cost().map(this::text).orElse("missing");
        return new Explanation(title, value, source, below, Optional.of(new Subject("item", line.item())));
    }

    private Explanation made(RecipeCost.Made made) {
        Item item = state.items().get(made.item());
        String title = "gives " + (item == null ? made.item() : item.name()) + ", " + text(made.quantity());
        return Explanation.leaf(title, text(made.unitCost()), made.credited() ? "credited" : "share of what remains");
    }

    private String text(Money money) {
        return money.rounded() + " " + currency.getCurrencyCode();
    }

    private String text(UnitPrice price) {
        return price.amount()
                        .setScale(4, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString() + " per " + price.per();
    }

    private String text(Quantity quantity) {
        return QuantityText.format(quantity, style);
    }
}
