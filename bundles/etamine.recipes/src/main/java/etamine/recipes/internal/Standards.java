package etamine.recipes.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.Trust;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a recipe still needs to be standardised. */
public final class Standards {
    private Standards() {}

    public static Trust of(Recipe recipe, ItemView items) {
        Optional<Ratio> portions = portions(recipe, items);
        List<String> missing = missing(recipe, portions);
        Trust.Level tried = recipe.tested() > 0 ? Trust.Level.TESTED : Trust.Level.DRAFT;
        return new Trust(missing.isEmpty() ? Trust.Level.STANDARDISED : tried, recipe.tested(), missing, portions);
    }

    private static List<String> missing(Recipe recipe, Optional<Ratio> portions) {
        List<String> missing = new ArrayList<>();
        int more = Trust.TRIES - recipe.tested();
        if (more > 0) {
            missing.add("Make it " + more + (more == 1 ? " more time" : " more times") + " with the same result.");
        }
        if (recipe.makes().isEmpty()) {
            missing.add("Say what it makes and how much.");
        }
        if (portions.isEmpty()) {
            missing.add("Write the size of a portion.");
        }
        if (recipe.steps().stream().allMatch(step -> step.equipment().isEmpty())) {
            missing.add("Name the equipment in the steps.");
        }
        if (recipe.steps().stream().noneMatch(Standards::isControlled)) {
            missing.add("Write a control point: the temperature of a step, or how long its result holds.");
        }
        return missing;
    }

    private static boolean isControlled(Step step) {
        return !step.temperature().isBlank() || !step.holds().isZero();
    }

    private static Optional<Ratio> portions(Recipe recipe, ItemView items) {
        if (recipe.makes().isEmpty()) {
            return Optional.empty();
        }
        Make main = recipe.makes().get(0);
        Converter converter = Converter.of(
                MadeThings.portion(recipe),
                items.find(main.item()).map(Item::measures).orElseGet(List::of));
        return converter.convert(main.quantity(), Unit.PORTION) instanceof Conversion.Converted found
                ? Optional.of(found.quantity()).map(Quantity::amount)
                : Optional.empty();
    }
}
