package etamine.ingredients.ui.internal;

import etamine.base.Explanation;
import etamine.base.Problem;
import etamine.base.Subject;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.ingredients.IngredientList;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.storage.BookException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** What the ingredients bench shows and does, without widgets. Safe on any thread. */
final class IngredientsModel {
    private static final int TRIES = 3;

    private final IngredientList list;
    private final Supplier<Optional<Costs>> costs;

    IngredientsModel(IngredientList list, Supplier<Optional<Costs>> costs) {
        this.list = list;
        this.costs = costs;
    }

    List<IngredientRow> rows() {
        return list.all().values().stream()
                .map(this::row)
                .sorted(Comparator.comparing(IngredientRow::group, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(IngredientRow::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    private IngredientRow row(Ingredient ingredient) {
        Item item = ingredient.item();
        return new IngredientRow(
                item.id(),
                item.name(),
                item.group(),
                FieldText.of(ingredient, Field.PRICE),
                item.storage(),
                item.allergens().inWords(),
                item.allergens().known(),
                list.usedIn(item.id()).size());
    }

    Optional<Ingredient> find(String id) {
        return list.find(id);
    }

    /** Whether something about it wants a look; asked only for the rows in view. */
    boolean isDoubtful(String id) {
        return !problems(id).isEmpty();
    }

    List<String> problems(String id) {
        return list.find(id).map(list::problems).orElseGet(List::of).stream()
                .map(Problem::text)
                .toList();
    }

    /** Adds an ingredient; answers its id or why not. */
    Change add(String name) {
        return list.save(Ingredient.named(list.freshId(name), name, Unit.KG), 0);
    }

    /** The id that {@link #add} gives next to an ingredient of that name. */
    String nextId(String name) {
        return list.freshId(name);
    }

    Change remove(String id) {
        return list.remove(id);
    }

    /** Makes one edit to the ingredient as it is now; somebody else's edit in between is kept. */
    Change save(String id, UnaryOperator<Ingredient> edit) {
        BookException stale = null;
        for (int attempt = 0; attempt < TRIES; attempt++) {
            long revision = list.revision(id);
            Ingredient now = list.find(id)
                    .orElseThrow(() -> new BookException(
                            BookException.Reason.MISSING, "This ingredient has been removed meanwhile."));
            try {
                return list.save(edit.apply(now), revision);
            } catch (BookException problem) {
                if (problem.reason() != BookException.Reason.STALE) {
                    throw problem;
                }
                stale = problem;
            }
        }
        throw stale == null ? new IllegalStateException("not tried") : stale;
    }

    /** What the slate says about an ingredient. */
    Optional<Explanation> explain(String id) {
        return list.find(id).map(this::explain);
    }

    private Explanation explain(Ingredient ingredient) {
        Item item = ingredient.item();
        List<Explanation> parts = new ArrayList<>();
        costs.get()
                .flatMap(known -> known.item(item.id()))
                .ifPresent(cost -> parts.add(Explanation.leaf(
                        "Cost as purchased",
                        price(cost.price(), item) + (cost.complete() ? "" : ", at least"),
                        cost.source())));
        for (Preparation preparation : item.preparations()) {
            String note = ingredient.yieldOf(preparation.name()).note();
            parts.add(Explanation.leaf(
                    "Yield, " + preparation.name(),
                    TableText.percent(preparation.yield()) + " %",
                    note.isEmpty() ? "written yield" : note));
        }
        parts.add(item.allergens().explained());
        List<Recipe> uses = list.usedIn(item.id());
        parts.add(Explanation.of(
                "Used in",
                uses.isEmpty() ? "no recipe" : uses.size() + (uses.size() == 1 ? " recipe" : " recipes"),
                uses.stream().map(IngredientsModel::use).toList()));
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

    static String sentences(Change.Refused refused) {
        return refused.problems().stream().map(Problem::text).collect(Collectors.joining(" "));
    }
}
