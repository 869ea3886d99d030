package etamine.ingredients.ui.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.ingredients.Ingredient;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the slate says about an item. */
final class IngredientStory {
    private IngredientStory() {}

    static Explanation of(Item item, Optional<Ingredient> listed, Optional<Costs> costs, List<Recipe> uses) {
        List<Explanation> parts = new ArrayList<>();
        costs.flatMap(known -> known.item(item.id()))
                .ifPresent(cost -> parts.add(Explanation.leaf(
                        "Cost as purchased",
                        price(cost.price(), item) + (cost.complete() ? "" : ", at least"),
                        cost.source())));
        for (Preparation preparation : item.preparations()) {
            String note = listed.map(
                            ingredient -> ingredient.yieldOf(preparation.name()).note())
                    .orElse("");
            parts.add(Explanation.leaf(
                    "Yield, " + preparation.name(),
                    TableText.percent(preparation.yield()) + " %",
                    note.isEmpty() ? "written yield" : note));
        }
        parts.add(item.allergens().explained());
        parts.add(Explanation.of(
                "Used in",
                uses.isEmpty() ? "no recipe" : uses.size() + (uses.size() == 1 ? " recipe" : " recipes"),
                uses.stream().map(IngredientStory::use).toList()));
        return Explanation.of(item.name(), "counted in " + item.countIn(), parts)
                .about(new Subject("item", item.id()));
    }

    private static String price(UnitPrice price, Item item) {
        Unit unit = switch (item.countIn().dimension()) {
            case MASS -> Unit.KG;
            case VOLUME -> Unit.L;
            default -> item.countIn();
        };
        return (price.per().unit().isLike(unit) ? price.in(unit) : price).toString();
    }

    private static Explanation use(Recipe recipe) {
        return Explanation.leaf(recipe.name(), "", "").about(new Subject("recipe", recipe.id()));
    }
}
