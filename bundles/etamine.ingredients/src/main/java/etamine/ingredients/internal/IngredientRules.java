package etamine.ingredients.internal;

import etamine.base.Problem;
import etamine.base.Severity;
import etamine.ingredients.Ingredient;
import etamine.ingredients.YieldRecord;
import etamine.ingredients.YieldTest;
import etamine.ingredients.YieldTest.Kind;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What an ingredient must be, and what makes it doubtful. */
final class IngredientRules {
    private final Ingredient ingredient;
    private final Item item;
    private final List<Finding> findings = new ArrayList<>();

    private IngredientRules(Ingredient ingredient) {
        this.ingredient = ingredient;
        this.item = ingredient.item();
    }

    static List<Problem> problems(Ingredient ingredient) {
        return findings(ingredient).stream()
                .map(finding -> finding.problem(ingredient.id()))
                .toList();
    }

    static List<Finding> findings(Ingredient ingredient) {
        return new IngredientRules(ingredient).all();
    }

    private List<Finding> all() {
        if (!item.id().matches("[\\p{L}\\p{N}][\\p{L}\\p{N}._-]{0,79}")) {
            error("bad-id", "/id", "Give it an identifier of letters, digits, dots or hyphens, such as celeriac.");
        }
        if (item.name().isBlank()) {
            error("no-name", "/name", "Give the ingredient a name.");
        }
        Set<String> names = new HashSet<>();
        for (int i = 0; i < item.preparations().size(); i++) {
            preparation(item.preparations().get(i), "/preparations/" + i, names);
        }
        price();
        allergens();
        MeasureContradictions.of(item).forEach(text -> warn("measure-contradiction", "/measures", text));
        return List.copyOf(findings);
    }

    private void preparation(Preparation preparation, String at, Set<String> names) {
        String name = preparation.name();
        YieldRecord record = ingredient.yieldOf(name);
        if (name.isBlank() || !names.add(name)) {
            error("preparation-name", at + "/name", "Give each preparation a name of its own; “" + name + "” is not.");
        }
        if (preparation.yield().signum() <= 0) {
            error("yield", at + "/yield", "The yield of “" + name + "” must be more than 0.");
        } else if (preparation.yield().compareTo(Ratio.ONE) > 0 && record.note().isEmpty()) {
            warn(
                    "yield-over-one",
                    at + "/yield",
                    "“" + name + "” yields more than was bought; say in its note why, such as soaked overnight.");
        }
        for (int i = 0; i < record.tests().size(); i++) {
            test(record.tests().get(i), name, at + "/tests/" + i);
        }
    }

    private void test(YieldTest test, String preparation, String at) {
        if (test.in().signum() <= 0
                || test.out().signum() <= 0
                || !test.in().unit().isLike(test.out().unit())) {
            error("test-weights", at, "A test of “" + preparation + "” needs two weights of more than 0.");
        } else if (test.yield().compareTo(Ratio.ONE) > 0 && test.kind() == Kind.TRIM) {
            error(
                    "test-over-one",
                    at + "/out",
                    "Trimming “" + preparation + "” cannot give " + test.out() + " of " + test.in()
                            + "; correct the weights, or make it a cooking test if it took up water.");
        } else if (test.yield().compareTo(Ratio.ONE) > 0 && test.note().isEmpty()) {
            warn(
                    "test-over-one",
                    at + "/note",
                    "The test of “" + preparation + "” of " + test.date()
                            + " gave more than went in; say in its note why, such as soaked overnight.");
        }
    }

    private void price() {
        item.writtenPrice().ifPresent(price -> {
            if (price.amount().signum() < 0) {
                error("negative-price", "/price/amount", "Write a price that is not less than zero.");
            }
            if (item.converter().convert(price.per(), item.countIn()) instanceof Conversion.Missing missing) {
                Unit unit = price.per().unit();
                String text = "Its price is per " + price.per() + " but it is counted in " + item.countIn() + ". "
                        + missing.text();
                if (unit.dimension() == Dimension.WORD) {
                    error("price-unit", "/price/per", text + " Or give the price per " + item.countIn() + ".");
                } else {
                    warn("price-unit", "/price/per", text);
                }
            }
        });
    }

    private void allergens() {
        Allergens allergens = item.allergens();
        if (allergens.contains().stream().anyMatch(allergens.mayContain()::contains)) {
            warn(
                    "allergen-twice",
                    "/mayContain",
                    "An allergen it contains is also listed as one it may contain; keep it in one list.");
        }
        allergens.named().keySet().stream()
                .filter(word -> !allergens.contains().contains(word)
                        && !allergens.mayContain().contains(word))
                .sorted()
                .forEach(word -> warn(
                        "allergen-name",
                        "/allergenNames/" + word,
                        "“" + word + "” has a name but is in neither list; say whether it contains it."));
        if (item.diet().suits().stream().anyMatch(item.diet().unsuited()::contains)) {
            warn("diet-twice", "/unsuited", "It cannot both suit a way of eating and not suit it; keep one.");
        }
    }

    private void error(String code, String pointer, String text) {
        findings.add(new Finding(code, Severity.ERROR, pointer, sentence(text)));
    }

    private void warn(String code, String pointer, String text) {
        findings.add(new Finding(code, Severity.WARNING, pointer, sentence(text)));
    }

    private String sentence(String text) {
        return item.name().isBlank() ? text : item.name() + ": " + text;
    }
}
