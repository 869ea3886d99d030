package etamine.costing.internal.live;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.costing.internal.engine.CompiledRecipe;
import etamine.costing.internal.engine.PortionSize;
import etamine.costing.internal.state.CostState;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.MeasureStyle;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Tells how a recipe's cost comes about, down to the prices; made things open into their own recipes. */
final class CostStory {
    private static final int DEPTH = 5;

    private final CostState state;
    private final CostReport report;
    private final MeasureStyle style;
    private final PlateStory plates;

    CostStory(CostState state, MeasureStyle style) {
        this.state = state;
        this.report = new CostReport(state);
        this.style = style;
        this.plates = new PlateStory(state);
    }

    Explanation of(CompiledRecipe compiled) {
        return recipe(compiled, DEPTH);
    }

    private Explanation recipe(CompiledRecipe compiled, int depth) {
        RecipeCost cost = report.of(compiled);
        Recipe recipe = compiled.recipe();
        List<Explanation> parts = new ArrayList<>();
        cost.plate().ifPresent(plate -> parts.addAll(plates.of(recipe, plate, atLeast(cost))));
        cost.drinks().forEach(drink -> parts.add(plates.with(drink)));
        cost.portion()
                .ifPresent(portion -> parts.add(Explanation.leaf(
                        "One portion"
                                + PortionSize.of(recipe)
                                        .map(size -> ", " + text(size))
                                        .orElse(""),
                        atLeast(cost) + plates.text(portion),
                        "")));
        cost.labour().ifPresent(labour -> parts.add(plates.of(labour)));
        cost.lines().forEach(line -> parts.add(line(line, depth)));
        making(recipe).ifPresent(parts::add);
        cost.makes().forEach(made -> parts.add(made(made)));
        cost.warnings().forEach(warning -> parts.add(Explanation.leaf(warning.text(), "", "look at this")));
        String value = atLeast(cost) + plates.text(cost.batch());
        return Explanation.of(recipe.name() + ", one batch", value, parts).about(new Subject("recipe", recipe.id()));
    }

    private static String atLeast(RecipeCost cost) {
        return cost.complete() ? "" : "at least ";
    }

    private Explanation line(RecipeCost.Line line, int depth) {
        Item item = state.items().get(line.item());
        String name = item == null ? line.item() : item.name();
        String title = name + line.as().map(as -> ", " + as).orElse("") + ", " + text(line.quantity());
        String source = line.asPurchased()
                        .filter(bought -> !bought.equals(line.quantity()))
                        .map(bought -> text(bought) + " as purchased" + yieldOf(item, line) + ", ")
                        .orElse("")
                + line.unitPrice().map(price -> PlateStory.text(price) + ", ").orElse("")
                + line.source();
        List<Explanation> below = state.makerOf(line.item())
                .filter(maker -> depth > 1)
                .flatMap(maker -> state.recipe(maker.id()))
                .map(maker -> List.of(recipe(maker, depth - 1)))
                .orElse(List.of());
        String value = line.cost().map(plates::text).orElse("missing");
        return new Explanation(title, value, source, below, Optional.of(new Subject("item", line.item())));
    }

    private static String yieldOf(@Nullable Item item, RecipeCost.Line line) {
        return Optional.ofNullable(item)
                .flatMap(bought -> line.as().flatMap(bought::preparation))
                .map(preparation -> " at a yield of " + preparation.yield())
                .orElse("");
    }

    /** Water that goes or comes changes how much there is, never what it cost. */
    private Optional<Explanation> making(Recipe recipe) {
        Optional<Explanation> reduced = recipe.making()
                .reducesTo()
                .map(ratio -> Explanation.leaf(
                        "reduces to " + ratio,
                        "",
                        "water leaves and the cost stays, so that what is left costs more for its size"));
        return reduced.or(() -> recipe.making()
                .absorbs()
                .map(water -> Explanation.leaf(
                        "takes up " + text(water) + " of water",
                        "",
                        "water costs nothing here, so that what comes out costs less for its size")));
    }

    private Explanation made(RecipeCost.Made made) {
        Item item = state.items().get(made.item());
        String title = "gives " + (item == null ? made.item() : item.name()) + ", " + text(made.quantity());
        String share = made.byMarketValue() ? "share of what remains, by market value" : "share of what remains";
        return Explanation.leaf(title, PlateStory.text(made.unitCost()), made.credited() ? "credited" : share);
    }

    private String text(Quantity quantity) {
        return QuantityText.format(quantity, style);
    }
}
