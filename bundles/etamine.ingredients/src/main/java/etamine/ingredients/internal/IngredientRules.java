package etamine.ingredients.internal;

import etamine.base.Problem;
import etamine.ingredients.Ingredient;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Conversion;
import etamine.measures.Ratio;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What an ingredient must be, and what makes it doubtful. */
final class IngredientRules {
    private final Ingredient ingredient;
    private final Item item;
    private final List<Problem> problems = new ArrayList<>();

    private IngredientRules(Ingredient ingredient) {
        this.ingredient = ingredient;
        this.item = ingredient.item();
    }

    static List<Problem> problems(Ingredient ingredient) {
        return new IngredientRules(ingredient).all();
    }

    private List<Problem> all() {
        if (!item.id().matches("[\\p{L}\\p{N}][\\p{L}\\p{N}._-]{0,79}")) {
            error("bad-id", "Give it an identifier of letters, digits, dots or hyphens, such as celeriac.");
        }
        if (item.name().isBlank()) {
            error("no-name", "Give the ingredient a name.");
        }
        preparations();
        price();
        allergens();
        MeasureContradictions.of(item).forEach(text -> warn("measure-contradiction", text));
        return List.copyOf(problems);
    }

    private void preparations() {
        Set<String> names = new HashSet<>();
        for (Preparation preparation : item.preparations()) {
            String name = preparation.name();
            if (name.isBlank() || !names.add(name)) {
                error("preparation-name", "Give each preparation a name of its own; “" + name + "” is not.");
            }
            if (preparation.yield().signum() <= 0) {
                error("yield", "The yield of “" + name + "” must be more than 0.");
            } else if (preparation.yield().compareTo(Ratio.ONE) > 0
                    && !ingredient.yieldNotes().containsKey(name)) {
                warn(
                        "yield-over-one",
                        "“" + name + "” yields more than was bought; say in its note why, such as soaked overnight.");
            }
        }
    }

    private void price() {
        item.writtenPrice().ifPresent(price -> {
            if (price.amount().signum() < 0) {
                error("negative-price", "Write a price that is not less than zero.");
            }
            if (item.converter().convert(price.per(), item.countIn()) instanceof Conversion.Missing missing) {
                warn(
                        "price-unit",
                        "Its price is per " + price.per() + " but it is counted in " + item.countIn() + ". "
                                + missing.text());
            }
        });
    }

    private void allergens() {
        if (item.allergens().contains().stream().anyMatch(item.allergens().mayContain()::contains)) {
            warn(
                    "allergen-twice",
                    "An allergen it contains is also listed as one it may contain; keep it in one list.");
        }
    }

    private void error(String code, String text) {
        problems.add(Problem.error(code, IngredientShelf.NAME + "/" + item.id(), sentence(text)));
    }

    private void warn(String code, String text) {
        problems.add(Problem.warning(code, IngredientShelf.NAME + "/" + item.id(), sentence(text)));
    }

    private String sentence(String text) {
        return item.name().isBlank() ? text : item.name() + ": " + text;
    }
}
