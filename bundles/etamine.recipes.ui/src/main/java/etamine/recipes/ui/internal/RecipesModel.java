package etamine.recipes.ui.internal;

import etamine.base.Problem;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.MeasureException;
import etamine.measures.MeasureStyle;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.recipes.Change;
import etamine.recipes.Scaled;
import etamine.storage.BookException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** What the recipes bench shows and does, without widgets. Safe on any thread. */
final class RecipesModel {
    private static final int TRIES = 3;

    private final Kitchenware ware;
    private final ItemWords words;
    private final TableText tables;

    RecipesModel(Kitchenware ware) {
        this.ware = ware;
        this.words = new ItemWords(ware.items());
        this.tables = new TableText(ware.lines(), words);
    }

    ItemWords words() {
        return words;
    }

    TableText tables() {
        return tables;
    }

    boolean hasCosts() {
        return ware.costs().get().isPresent();
    }

    List<String> complete(String line) {
        return ware.lines().complete(line, 20);
    }

    List<RecipeRow> rows() {
        return ware.recipes().all().values().stream()
                .map(this::row)
                .sorted(Comparator.comparing(RecipeRow::kind)
                        .thenComparing(RecipeRow::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    private RecipeRow row(Recipe recipe) {
        return new RecipeRow(recipe.id(), recipe.name(), recipe.kind());
    }

    Optional<Recipe> find(String id) {
        return ware.recipes().find(id);
    }

    /** Whether something about it wants a look; asked only for the rows in view. */
    boolean isDoubtful(String id) {
        return find(id).map(ware.book()::problems)
                .filter(problems -> !problems.isEmpty())
                .isPresent();
    }

    List<String> problems(Recipe recipe) {
        return ware.book().problems(recipe).stream().map(Problem::text).toList();
    }

    /** The lines used: as typed, as purchased, what each costs. */
    List<List<String>> uses(Recipe recipe) {
        Optional<RecipeCost> cost = ware.costs().get().flatMap(costs -> costs.recipe(recipe.id()));
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < recipe.uses().size(); i++) {
            Use use = recipe.uses().get(i);
            int line = i;
            String price = cost.filter(known -> line < known.lines().size())
                    .flatMap(known -> known.lines().get(line).cost())
                    .map(money -> money.rounded().toString())
                    .orElse("");
            rows.add(List.of(ware.lines().write(use), asPurchased(use), price));
        }
        return rows;
    }

    String asPurchased(Use use) {
        return words.find(use.item())
                .map(use::asPurchased)
                .filter(Conversion.Converted.class::isInstance)
                .map(conversion -> text(conversion.orThrow()))
                .orElse("?");
    }

    /** Makes one edit to the recipe as it is now; somebody else's edit in between is kept. */
    Change save(String id, UnaryOperator<Recipe> edit) {
        BookException stale = null;
        for (int attempt = 0; attempt < TRIES; attempt++) {
            long revision = ware.book().revision(id);
            Recipe now = find(id).orElseThrow(() ->
                    new BookException(BookException.Reason.MISSING, "This recipe has been removed meanwhile."));
            try {
                return ware.book().save(edit.apply(now), revision);
            } catch (BookException problem) {
                if (problem.reason() != BookException.Reason.STALE) {
                    throw problem;
                }
                stale = problem;
            }
        }
        throw stale == null ? new IllegalStateException("not tried") : stale;
    }

    Change add(String name, Kind kind) {
        return ware.book().save(ware.book().start(name, kind), 0);
    }

    Change copy(String id, String name) {
        return ware.book().copy(id, name);
    }

    Change remove(String id) {
        return ware.book().remove(id);
    }

    /** The recipe for an amount, or for covers when only a number is typed. */
    Scaled scale(String id, String typed) {
        String text = typed.strip().replaceAll("(?i)\\s*covers?$", "");
        try {
            return text.matches("[0-9]{1,6}")
                    ? ware.scaling().forCovers(id, Ratio.parse(text))
                    : ware.scaling().to(id, QuantityText.parse(text));
        } catch (MeasureException unclear) {
            return new Scaled.Impossible(unclear.getMessage());
        }
    }

    /** The lines of a scaled recipe: quantity, item, preparation, basis. */
    List<ScaledLine> lines(Recipe scaled) {
        List<ScaledLine> lines = new ArrayList<>();
        for (Use use : scaled.uses()) {
            lines.add(new ScaledLine(
                    lines.size(),
                    "uses",
                    text(use.quantity()),
                    shown(use.item()),
                    use.as().orElse(""),
                    use.basis().name()));
        }
        for (Make make : scaled.makes()) {
            lines.add(new ScaledLine(lines.size(), "makes", text(make.quantity()), shown(make.item()), "", ""));
        }
        return lines;
    }

    String shown(String item) {
        return words.find(item).map(known -> known.name()).orElse(item);
    }

    String text(Quantity quantity) {
        MeasureStyle style = ware.kitchen()
                .get()
                .map(Kitchen::house)
                .map(house -> house.measures())
                .orElse(MeasureStyle.METRIC);
        return QuantityText.format(quantity, style);
    }

    static String sentences(Change.Refused refused) {
        return refused.problems().stream().map(Problem::text).collect(Collectors.joining(" "));
    }
}
