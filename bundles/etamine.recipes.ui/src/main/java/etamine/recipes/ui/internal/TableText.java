package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.PairedDrink;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import java.time.Duration;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The small tables of the form as text, and back. Emptied rows go. */
final class TableText {
    private static final Pattern PRICE = Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*(?:/|per)\\s*(.+)");

    private final ItemWords words;
    private final UnaryOperator<String> recipeNames;
    private final Function<String, Optional<String>> recipeIds;

    TableText(ItemWords words, UnaryOperator<String> recipeNames, Function<String, Optional<String>> recipeIds) {
        this.words = words;
        this.recipeNames = recipeNames;
        this.recipeIds = recipeIds;
    }

    List<List<String>> makes(Recipe recipe) {
        return recipe.makes().stream()
                .map(make -> List.of(
                        words.name(make.item()),
                        QuantityText.formatExact(make.quantity()),
                        make.credit().map(TableText::price).orElse(""),
                        make.marketValue().map(TableText::price).orElse("")))
                .toList();
    }

    /** Reads one thing made: item, quantity, credit, market value. */
    Attempt make(int row, List<String> cells) {
        if (isEmpty(cells)) {
            return new Attempt.Edit(recipe -> recipe.withMakes(Rows.without(recipe.makes(), row)));
        }
        if (cells.get(0).isEmpty()) {
            return new Attempt.Bad("Name what it makes.");
        }
        try {
            Quantity quantity = QuantityText.parse(cells.get(1).isEmpty() ? "0 g" : cells.get(1));
            if (quantity.isZero()) {
                return new Attempt.Bad("Write how much it makes, such as 380 g.");
            }
            String item = words.id(cells.get(0));
            Make typed = new Make(item, quantity, unitPrice(cells.get(2)), unitPrice(cells.get(3)));
            return new Attempt.Edit(recipe -> recipe.withMakes(Rows.with(recipe.makes(), row, typed)));
        } catch (MeasureException unclear) {
            return new Attempt.Bad(unclear.getMessage());
        }
    }

    /** A value such as {@code 1.00 / kg}; nothing for nothing. */
    static Optional<UnitPrice> unitPrice(String text) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher parts = PRICE.matcher(text);
        if (!parts.matches()) {
            throw new MeasureException("Write a value such as 1.00 / kg, or leave it empty.");
        }
        String per = parts.group(2);
        Quantity quantity = QuantityText.parse(Character.isDigit(per.charAt(0)) ? per : "1 " + per);
        return Optional.of(
                new UnitPrice(FieldText.decimal(parts.group(1), "Write a value such as 1.00 / kg."), quantity));
    }

    private static String price(UnitPrice price) {
        boolean one = price.per().amount().equals(Ratio.ONE);
        return price.amount().toPlainString() + " / "
                + (one ? price.per().unit().symbol() : QuantityText.formatExact(price.per()));
    }

    static List<List<String>> steps(Recipe recipe) {
        Map<String, Integer> places = new HashMap<>();
        for (int at = recipe.steps().size(); at > 0; at--) {
            places.put(recipe.steps().get(at - 1).id(), at);
        }
        return recipe.steps().stream()
                .map(step -> List.of(
                        step.text(),
                        TimeText.of(step.hands()),
                        TimeText.of(step.unattended()),
                        step.equipment(),
                        step.temperature(),
                        TimeText.of(step.holds()),
                        step.after().stream()
                                .map(id ->
                                        places.containsKey(id) ? places.get(id).toString() : id)
                                .collect(Collectors.joining(", ")),
                        step.station()))
                .toList();
    }

    /** Reads one step: text, hands, waiting, equipment, temperature, how long it holds, steps before, station. */
    static Attempt step(int row, List<String> cells) {
        if (isEmpty(cells)) {
            return new Attempt.Edit(recipe -> recipe.withSteps(Rows.without(recipe.steps(), row)));
        }
        try {
            List.of(1, 2, 5).forEach(time -> TimeText.read(cells.get(time)));
            return new Attempt.Edit(
                    recipe -> recipe.withSteps(Rows.with(recipe.steps(), row, step(recipe, row, cells))));
        } catch (MeasureException unclear) {
            return new Attempt.Bad(unclear.getMessage());
        }
    }

    private static Step step(Recipe recipe, int row, List<String> cells) {
        Step old = row < recipe.steps().size()
                ? recipe.steps().get(row)
                : new Step(freshId(recipe), "", Duration.ZERO, Duration.ZERO, "", List.of());
        return new Step(
                old.id(),
                cells.get(0),
                TimeText.keeping(old.hands(), cells.get(1)),
                TimeText.keeping(old.unattended(), cells.get(2)),
                cells.get(3),
                stepIds(recipe, cells.get(6)),
                cells.get(4),
                TimeText.keeping(old.holds(), cells.get(5)),
                cells.get(7));
    }

    private static List<String> stepIds(Recipe recipe, String numbers) {
        return Arrays.stream(numbers.split(","))
                .map(String::strip)
                .filter(number -> !number.isEmpty())
                .map(number -> stepId(recipe, number))
                .toList();
    }

    private static String stepId(Recipe recipe, String number) {
        boolean counted = number.matches("[0-9]{1,3}")
                && Integer.parseInt(number) >= 1
                && Integer.parseInt(number) <= recipe.steps().size();
        return counted ? recipe.steps().get(Integer.parseInt(number) - 1).id() : number;
    }

    private static String freshId(Recipe recipe) {
        List<String> ids = recipe.steps().stream().map(Step::id).toList();
        int number = ids.size() + 1;
        while (ids.contains(Integer.toString(number))) {
            number++;
        }
        return Integer.toString(number);
    }

    List<List<String>> drinks(Recipe recipe) {
        return recipe.drinks().stream()
                .map(drink -> List.of(recipeNames.apply(drink.recipe()), drink.level()))
                .toList();
    }

    /** Reads one drink: the name or id of its recipe, its price level. */
    Attempt drink(int row, List<String> cells) {
        if (isEmpty(cells)) {
            return new Attempt.Edit(recipe -> recipe.withDrinks(Rows.without(recipe.drinks(), row)));
        }
        return recipeIds
                .apply(cells.get(0))
                .<Attempt>map(id -> new Attempt.Edit(recipe ->
                        recipe.withDrinks(Rows.with(recipe.drinks(), row, new PairedDrink(id, cells.get(1))))))
                .orElseGet(() -> new Attempt.Bad("No recipe is called that; write the drink as a recipe first."));
    }

    private static boolean isEmpty(List<String> cells) {
        return cells.stream().allMatch(String::isEmpty);
    }
}
