package etamine.costing.internal.paper;

import etamine.documents.Block;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Everything on the menu with its figures.
 *
 * @param costs what things cost
 * @param recipes by id
 */
record PriceListPaper(Costs costs, Map<String, Recipe> recipes) {

    /** A recipe on the menu. */
    record Row(Recipe recipe, MenuPrice menu, RecipeCost cost, PlateCost plate) {}

    CostTable<Row> table() {
        List<Row> rows = recipes.values().stream()
                .filter(recipe ->
                        recipe.menu().isPresent() && !recipe.standing().archived())
                .flatMap(recipe -> costs
                        .recipe(recipe.id())
                        .flatMap(cost -> cost.plate()
                                .map(plate -> new Row(recipe, recipe.menu().orElseThrow(), cost, plate)))
                        .stream())
                .sorted(Comparator.comparing((Row row) -> row.recipe().kind())
                        .thenComparing(row -> row.recipe().name()))
                .toList();
        return CostTable.of(rows)
                .with("Id", 4, row -> row.recipe().id())
                .with("Name", 8, row -> row.recipe().name())
                .with("Kind", 3, row -> row.recipe().kind().name().toLowerCase(Locale.ROOT))
                .with("Price with tax", 3, row -> row.menu().price())
                .with("Tax %", 2, row -> row.menu().taxPercent())
                .with("Price net", 3, row -> row.plate().net())
                .with("Cost", 3, row -> row.plate().cost())
                .with("Food cost %", 3, row -> row.plate().foodCostPercent())
                .with("Not above %", 3, row -> row.plate().target())
                .with("Contribution", 3, row -> row.plate().contribution())
                .with("Look", 4, PriceListPaper::look);
    }

    private static String look(Row row) {
        if (!row.cost().complete()) {
            return "cost at least that";
        }
        return row.plate().contribution().signum() < 0
                ? "below cost"
                : row.plate().overTarget() ? "above target" : "";
    }

    List<Block> blocks() {
        CostTable<Row> table = table();
        return table.rows().isEmpty()
                ? List.of(new Block.Text("Nothing is on the menu yet; write a menu price on a recipe."))
                : List.of(table.grid());
    }
}
