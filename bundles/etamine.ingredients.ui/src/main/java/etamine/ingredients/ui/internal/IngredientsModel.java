package etamine.ingredients.ui.internal;

import etamine.base.Explanation;
import etamine.base.Problem;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.ingredients.IngredientList;
import etamine.ingredients.ui.internal.IngredientRow.Origin;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemMentions.Mention;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Unit;
import etamine.storage.BookException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** What the ingredients bench shows and does, without widgets. Safe on any thread. */
final class IngredientsModel {
    private static final int TRIES = 3;
    private static final Comparator<IngredientRow> ORDER = Comparator.comparing(IngredientRow::made)
            .thenComparing(IngredientRow::group, String.CASE_INSENSITIVE_ORDER)
            .thenComparing(IngredientRow::name, String.CASE_INSENSITIVE_ORDER);

    private final Known known;
    private final IngredientList list;

    IngredientsModel(Known known) {
        this.known = known;
        this.list = known.list();
    }

    /** The listed ingredients by group and name, then what is made here. */
    List<IngredientRow> rows() {
        Map<String, Ingredient> listed = list.all();
        return known.items().all().values().stream()
                .map(item -> row(item, Optional.ofNullable(listed.get(item.id()))))
                .sorted(ORDER)
                .toList();
    }

    private IngredientRow row(Item item, Optional<Ingredient> listed) {
        return new IngredientRow(
                item.id(),
                item.name(),
                listed.isEmpty() && item.group().isEmpty() ? "Made here" : item.group(),
                listed.map(ingredient -> FieldText.of(ingredient, Field.PRICE)).orElse(""),
                item.storage(),
                item.allergens().inWords(),
                item.allergens().known(),
                list.usedIn(item.id()).size(),
                listed.isPresent() ? Origin.LISTED : Origin.MADE);
    }

    Optional<Ingredient> find(String id) {
        return list.find(id);
    }

    LocalDate today() {
        return known.kitchen().today();
    }

    /** The recipe that makes an item, when one does. */
    Optional<Recipe> maker(String id) {
        return known.others().recipes().get().flatMap(recipes -> recipes.maker(id));
    }

    /** Everything in the book that names the item. */
    List<Mention> mentions(String id) {
        return known.merges().mentions(id);
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

    /** How many of the common ingredients the book lacks. */
    int startersMissing() {
        return known.starters().missing().size();
    }

    int addStarters() {
        return known.starters().add();
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

    /** What the slate says about an item. */
    Optional<Explanation> explain(String id) {
        return known.items()
                .find(id)
                .map(item -> IngredientStory.of(
                        item, list.find(id), known.others().costs().get(), list.usedIn(id)));
    }

    static String sentences(Change.Refused refused) {
        return refused.problems().stream().map(Problem::text).collect(Collectors.joining(" "));
    }
}
