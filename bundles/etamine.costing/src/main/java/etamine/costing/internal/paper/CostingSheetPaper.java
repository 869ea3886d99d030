package etamine.costing.internal.paper;

import etamine.base.Problem;
import etamine.costing.internal.words.Amounts;
import etamine.costing.internal.words.CostJson;
import etamine.documents.Block;
import etamine.documents.Block.Facts.Pair;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.MeasureStyle;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The costing sheet of one recipe.
 *
 * @param cost what it costs
 * @param recipe the recipe, where somebody keeps it
 * @param items names
 * @param style how quantities are shown
 */
record CostingSheetPaper(RecipeCost cost, Optional<Recipe> recipe, Items items, MeasureStyle style) {

    /** A line and its place, which stands in its block of the picture too. */
    record Numbered(int place, RecipeCost.Line line) {}

    String title() {
        return recipe.map(Recipe::name).orElse(items.name(cost.recipe()));
    }

    CostTable<Numbered> lines() {
        List<Numbered> rows = new ArrayList<>();
        cost.lines().forEach(line -> rows.add(new Numbered(rows.size() + 1, line)));
        return CostTable.of(rows)
                .with("No.", 1, row -> String.valueOf(row.place()))
                .with("Takes", 6, row -> name(row.line()))
                .with("Quantity", 3, row -> text(row.line().quantity()))
                .with("As purchased", 3, row -> row.line().asPurchased().map(this::text))
                .with("Price", 4, row -> row.line().unitPrice().map(CostJson::text))
                .with("From", 6, row -> row.line().source())
                .with(
                        "Cost",
                        2,
                        row -> row.line().cost().map(money -> (Object) money).orElse("missing"))
                .with("%", 2, row -> row.line().cost().flatMap(money -> Amounts.percent(money, cost.batch())));
    }

    private String name(RecipeCost.Line line) {
        return items.name(line.item()) + line.as().map(as -> ", " + as).orElse("");
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (!cost.complete()) {
            blocks.add(new Block.Caution("A price or a measure is missing, so every figure here is at least that: "
                    + String.join(", ", cost.missing().stream().map(items::name).toList())));
        }
        blocks.add(new Block.Facts(facts()));
        List<CostBlocks.Piece> pieces = new ArrayList<>();
        lines().rows()
                .forEach(row -> row.line()
                        .cost()
                        .ifPresent(money -> pieces.add(
                                new CostBlocks.Piece(String.valueOf(row.place()), name(row.line()), money))));
        new CostBlocks("Cost of one batch by line", pieces).drawing().ifPresent(blocks::add);
        blocks.add(new Block.Heading("One batch"));
        String[] totals = {"", "In all", "", "", "", "", cost.batch().rounded().toString(), "100"};
        blocks.add(lines().grid(totals));
        blocks.add(new Block.Heading("It gives"));
        blocks.add(makes().grid());
        if (!cost.drinks().isEmpty()) {
            blocks.add(new Block.Heading("With a drink"));
            blocks.add(drinks().grid());
        }
        cost.warnings().stream().map(Problem::text).forEach(text -> blocks.add(new Block.Text(text)));
        return blocks;
    }

    private List<Pair> facts() {
        List<Pair> facts = new ArrayList<>();
        cost.portion().ifPresent(portion -> add(facts, "One portion", portion));
        cost.plate().ifPresent(plate -> {
            PlateCost.Parts parts = plate.parts();
            unlessNothing(facts, "Q factor, share for what is too small to measure", parts.qFactorShare());
            unlessNothing(facts, "Q factor, amount for what accompanies every plate", parts.qFactorAmount());
            unlessNothing(facts, "Packaging and garnish", parts.packaging());
            add(facts, "Plate cost", plate.cost());
            recipe.flatMap(Recipe::menu)
                    .map(MenuPrice::price)
                    .ifPresent(price -> facts.add(new Pair("On the menu, with tax", price.toPlainString())));
            add(facts, "Price without tax", plate.net());
            plate.foodCostPercent().ifPresent(percent -> facts.add(new Pair("Food cost", percent + " %")));
            plate.target().ifPresent(limit -> facts.add(new Pair("Not above", limit.toPlainString() + " %")));
            add(facts, "Contribution", plate.contribution());
            plate.labour().ifPresent(work -> add(facts, "Hands-on work", work));
            plate.prime().ifPresent(prime -> add(facts, "Prime cost", prime));
        });
        return facts;
    }

    private static void add(List<Pair> facts, String label, Money money) {
        facts.add(new Pair(label, money.rounded().toString()));
    }

    private static void unlessNothing(List<Pair> facts, String label, Money money) {
        if (!money.isZero()) {
            add(facts, label, money);
        }
    }

    private CostTable<RecipeCost.Made> makes() {
        return CostTable.of(cost.makes())
                .with("Makes", 6, made -> items.name(made.item()))
                .with("Quantity", 3, made -> text(made.quantity()))
                .with("Costs", 4, made -> CostJson.text(made.unitCost()))
                .with("How", 6, RecipeCostWords::how);
    }

    private CostTable<RecipeCost.WithDrink> drinks() {
        return CostTable.of(cost.drinks())
                .with("Drink", 6, pair -> items.name(pair.drink()))
                .with("Level", 3, RecipeCost.WithDrink::level)
                .with("Both cost", 3, RecipeCost.WithDrink::cost)
                .with("Both net", 3, RecipeCost.WithDrink::net)
                .with("Cost %", 2, pair -> pair.costPercent().map(BigDecimal::toPlainString))
                .with("Contribution", 3, RecipeCost.WithDrink::contribution);
    }

    private String text(Quantity quantity) {
        return QuantityText.format(quantity, style);
    }
}
