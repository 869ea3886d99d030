package etamine.costing.internal.trial;

import etamine.costing.Experiment;
import etamine.costing.Experiment.Line;
import etamine.costing.Experiment.Prepared;
import etamine.costing.internal.engine.CompiledRecipe;
import etamine.costing.internal.state.CostState;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The recipes and items as an experiment would have them; what makes no sense is left as it is and noted. */
final class TrialMaking {
    private final CostState state;
    private final Map<String, Recipe> recipes = new LinkedHashMap<>();
    private final Map<String, Item> items = new LinkedHashMap<>();
    private final List<String> notes = new ArrayList<>();

    TrialMaking(CostState state, Experiment experiment) {
        this.state = state;
        experiment.yields().forEach(this::yieldOf);
        experiment.gives().forEach(this::gives);
        experiment.portions().forEach(this::portion);
        experiment.lines().forEach(this::line);
        experiment.menuPrices().forEach(this::menuPrice);
    }

    /** The recipes that differ, by id. */
    Map<String, Recipe> recipes() {
        return recipes;
    }

    /** The items that differ, by id. */
    Map<String, Item> items() {
        return items;
    }

    List<String> notes() {
        return notes;
    }

    private void yieldOf(Prepared prepared, Ratio yield) {
        Item item = item(prepared.item());
        if (item == null || item.preparation(prepared.preparation()).isEmpty()) {
            notes.add("There is no preparation “" + prepared.preparation() + "” of " + name(prepared.item())
                    + "; add it first.");
        } else if (yield.signum() <= 0) {
            notes.add(item.name() + ", " + prepared.preparation() + ": a yield must be more than 0.");
        } else {
            items.put(
                    item.id(),
                    item.withPreparations(item.preparations().stream()
                            .map(each -> each.name().equals(prepared.preparation())
                                    ? new Preparation(each.name(), yield, each.measures())
                                    : each)
                            .toList()));
        }
    }

    private void gives(String id, Quantity quantity) {
        Recipe recipe = recipe(id, quantity);
        if (recipe != null && !recipe.makes().isEmpty()) {
            List<Make> makes = new ArrayList<>(recipe.makes());
            makes.set(0, makes.get(0).withQuantity(quantity));
            recipes.put(id, recipe.withMakes(makes));
        }
    }

    private void portion(String id, Quantity size) {
        Recipe recipe = recipe(id, size);
        if (recipe == null || recipe.makes().isEmpty()) {
            return;
        }
        recipes.put(id, recipe.withPortion(Optional.of(size)));
        Item item = item(recipe.makes().get(0).item());
        if (item != null && !size.unit().isLike(Unit.PORTION)) {
            List<Equivalence> measures = new ArrayList<>();
            measures.add(new Equivalence(Quantity.of(1, Unit.PORTION), size));
            item.measures().stream()
                    .filter(measure -> !measure.of().unit().isLike(Unit.PORTION))
                    .forEach(measures::add);
            items.put(item.id(), item.withMeasures(measures));
        }
    }

    private void line(Line line, Quantity quantity) {
        Recipe recipe = recipe(line.recipe(), quantity);
        if (recipe == null) {
            return;
        }
        if (line.index() < 0 || line.index() >= recipe.uses().size()) {
            notes.add(recipe.name() + " has no line " + (line.index() + 1) + ".");
            return;
        }
        List<Use> uses = new ArrayList<>(recipe.uses());
        uses.set(line.index(), uses.get(line.index()).withQuantity(quantity));
        recipes.put(recipe.id(), recipe.withUses(uses));
    }

    private void menuPrice(String id, BigDecimal price) {
        Recipe recipe = known(id);
        if (recipe != null && recipe.menu().isEmpty()) {
            notes.add(recipe.name() + " is not on the menu; write a menu price on it first.");
        } else if (recipe != null && price.signum() < 0) {
            notes.add(recipe.name() + ": a menu price cannot be less than nothing.");
        } else if (recipe != null) {
            recipes.put(id, recipe.withMenu(recipe.menu().map(menu -> menu.withPrice(price))));
        }
    }

    private @Nullable Recipe recipe(String id, Quantity quantity) {
        Recipe recipe = known(id);
        if (recipe != null && quantity.signum() <= 0) {
            notes.add(recipe.name() + ": write more than zero instead of " + quantity + ".");
            return null;
        }
        return recipe;
    }

    private @Nullable Recipe known(String id) {
        Recipe recipe = recipes.getOrDefault(
                id, state.recipe(id).map(CompiledRecipe::recipe).orElse(null));
        if (recipe == null) {
            notes.add("There is no recipe “" + id + "”.");
        }
        return recipe;
    }

    private @Nullable Item item(String id) {
        return items.getOrDefault(id, state.items().get(id));
    }

    private String name(String id) {
        Item item = state.items().get(id);
        return item == null ? "“" + id + "”" : item.name();
    }
}
