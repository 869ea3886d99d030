package etamine.costing.internal.engine;

import etamine.base.Problem;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Resolves the quantities of recipes over the items it is given. A book writes few different ways of measuring an item
 * on very many lines, so each way is converted exactly once and kept for as long as the compiler lives. Thread-safe.
 */
public final class RecipeCompiler {
    private final Map<String, Item> items;
    private final Map<Way, Conversion> ways = new ConcurrentHashMap<>();

    /** What decides how the lines of an item convert, whatever their amounts. */
    private record Way(String item, Optional<String> as, Basis basis, Unit unit) {
        static Way of(Use use) {
            return new Way(use.item(), use.as(), use.basis(), use.quantity().unit());
        }

        Use one() {
            return new Use(item, Quantity.of(1, unit), as, basis);
        }
    }

    public RecipeCompiler(Map<String, Item> items) {
        this.items = items;
    }

    public CompiledRecipe compile(Recipe recipe) {
        List<Problem> problems = new ArrayList<>();
        double[] lines = new double[recipe.uses().size()];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = line(recipe, i, problems);
        }
        int made = recipe.makes().size();
        double[] outputs = new double[made];
        double[] credits = new double[made];
        for (int i = 0; i < made; i++) {
            outputs[i] = output(recipe, recipe.makes().get(i), problems);
            credits[i] = credit(recipe, recipe.makes().get(i), problems);
        }
        Sharing sharing = new Sharing(recipe, items);
        sharing.problem()
                .map(text -> problem("missing-equivalence", recipe, text))
                .ifPresent(problems::add);
        return new CompiledRecipe(
                recipe,
                lines,
                outputs,
                sharing.shares(),
                credits,
                portion(recipe),
                sharing.byMarketValue(),
                List.copyOf(problems));
    }

    private double portion(Recipe recipe) {
        Item item = recipe.makes().isEmpty()
                ? null
                : items.get(recipe.makes().get(0).item());
        Optional<Quantity> size = PortionSize.of(recipe);
        return item != null
                        && size.isPresent()
                        && Reckoning.convert(item, size.get()) instanceof Conversion.Converted done
                ? Reckoning.units(done.quantity())
                : Double.NaN;
    }

    /** How much of a line as purchased, or why it cannot be said. */
    public Optional<Quantity> asPurchased(Use use) {
        Item item = items.get(use.item());
        return item != null && use.asPurchased(item) instanceof Conversion.Converted done
                ? Optional.of(done.quantity())
                : Optional.empty();
    }

    private double line(Recipe recipe, int index, List<Problem> problems) {
        Use use = recipe.uses().get(index);
        Item item = items.get(use.item());
        if (item == null) {
            problems.add(problem(
                    "unknown-item", recipe, place(index) + "uses " + use.item() + ", which nobody knows: add it."));
            return Double.NaN;
        }
        if (spoilt(use, item)) {
            problems.add(problem(
                    "zero-yield",
                    recipe,
                    place(index) + item.name() + ", " + use.as().orElse("")
                            + ", yields nothing, so that no amount would be enough: write a yield above 0."));
            return Double.NaN;
        }
        Conversion one = ways.computeIfAbsent(Way.of(use), way -> way.one().asPurchased(item));
        if (one instanceof Conversion.Converted done) {
            return use.quantity().amount().doubleValue() * Reckoning.units(done.quantity());
        }
        problems.add(problem("missing-equivalence", recipe, place(index) + item.name() + ": " + missing(one)));
        return Double.NaN;
    }

    private static String place(int index) {
        return "line " + (index + 1) + ", ";
    }

    private static boolean spoilt(Use use, Item item) {
        return use.basis() == Basis.EP
                && use.as()
                        .flatMap(item::preparation)
                        .filter(preparation -> preparation.yield().signum() <= 0)
                        .isPresent();
    }

    private double output(Recipe recipe, Make make, List<Problem> problems) {
        Item item = items.get(make.item());
        if (item == null) {
            problems.add(problem("unknown-item", recipe, "makes " + make.item() + ", which nobody knows: add it."));
            return Double.NaN;
        }
        Conversion conversion = Reckoning.convert(item, make.quantity());
        if (conversion instanceof Conversion.Converted done) {
            return Reckoning.units(done.quantity());
        }
        problems.add(problem("missing-equivalence", recipe, item.name() + ": " + missing(conversion)));
        return Double.NaN;
    }

    private double credit(Recipe recipe, Make make, List<Problem> problems) {
        if (make.credit().isEmpty()) {
            return 0;
        }
        Quantity per = make.credit().get().per();
        Item item = items.get(make.item());
        if (per.unit().isLike(make.quantity().unit())) {
            return make.credit().get().cost(make.quantity()).doubleValue();
        }
        if (item != null
                && item.converter().convert(make.quantity(), per.unit()) instanceof Conversion.Converted done) {
            return make.credit().get().cost(done.quantity()).doubleValue();
        }
        problems.add(problem(
                "missing-equivalence",
                recipe,
                "the credit of " + make.item() + " is per " + per + " but it is made in "
                        + make.quantity().unit()
                        + ": add what one is in the other; until then the credit does not count."));
        return 0;
    }

    private static String missing(Conversion conversion) {
        return ((Conversion.Missing) conversion).text();
    }

    private static Problem problem(String code, Recipe recipe, String text) {
        return Problem.warning(code, "recipes/" + recipe.id(), recipe.name() + ": " + text);
    }
}
