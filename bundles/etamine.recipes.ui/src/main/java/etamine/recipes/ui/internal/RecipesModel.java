package etamine.recipes.ui.internal;

import etamine.base.Problem;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.find.NameMatch;
import etamine.kitchen.house.House;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.ItemStarter;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Equivalence;
import etamine.measures.MeasureException;
import etamine.measures.MeasureStyle;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.recipes.Change;
import etamine.recipes.RecipeSearch;
import etamine.recipes.UseLines;
import etamine.storage.BookException;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the recipes bench shows and does, without widgets. Safe on any thread. */
final class RecipesModel {
    private static final int TRIES = 3;
    private static final int COMPLETIONS = 20;
    private static final int SHORT = 1000;

    private final Kitchenware ware;
    private final ItemWords words;
    private final TableText tables;
    private volatile boolean reckoned;

    RecipesModel(Kitchenware ware) {
        this.ware = ware;
        this.words = new ItemWords(ware.others().items());
        this.tables = new TableText(words, this::recipeName, this::recipeId);
    }

    ItemWords words() {
        return words;
    }

    TableText tables() {
        return tables;
    }

    boolean hasCosts() {
        return ware.others().costs().get().isPresent();
    }

    /** Reckons the whole book once, which may take a while; before, no cost is shown. */
    boolean reckon() {
        ware.others().costs().get().ifPresent(Costs::recipes);
        reckoned = true;
        return hasCosts();
    }

    /** What a recipe costs, once the book has been reckoned. */
    Optional<RecipeCost> cost(String id) {
        return reckoned ? ware.others().costs().get().flatMap(costs -> costs.recipe(id)) : Optional.empty();
    }

    private String recipeName(String id) {
        return find(id).map(Recipe::name).orElse(id);
    }

    private Optional<String> recipeId(String name) {
        return ware.recipes().all().values().stream()
                .filter(recipe ->
                        recipe.name().equalsIgnoreCase(name) || recipe.id().equals(name))
                .map(Recipe::id)
                .findFirst();
    }

    /**
     * Ways to complete a line, each of which is clear. Nothing for a line that is clear itself, so that Enter never takes
     * another one for it; and nothing that the recipe makes itself, which would go round in a circle.
     */
    List<String> complete(String recipe, String line) {
        if (!line.strip().endsWith(",") && isClear(line)) {
            return List.of();
        }
        boolean measured = line.chars().anyMatch(Character::isDigit);
        Set<String> own = own(recipe);
        return ware.lines().complete(line, COMPLETIONS).stream()
                .filter(each -> !measured || isClearWithout(own, each))
                .toList();
    }

    private boolean isClearWithout(Set<String> own, String line) {
        return ware.lines().read(line) instanceof UseLines.Reading.Clear clear
                && !own.contains(clear.use().item());
    }

    /** Reads the lines of a recipe. */
    UseLines lines(String recipe) {
        return new OwnLines(ware.lines(), () -> own(recipe), words);
    }

    private Set<String> own(String recipe) {
        return find(recipe).map(Recipe::makes).orElseGet(List::of).stream()
                .map(Make::item)
                .collect(Collectors.toSet());
    }

    private boolean isClear(String line) {
        return ware.lines().read(line) instanceof UseLines.Reading.Clear;
    }

    List<String> completeDrink(String typed) {
        NameMatch match = new NameMatch(typed);
        return ware.recipes().all().values().stream()
                .filter(recipe -> recipe.kind() == Kind.DRINK && match.fits(recipe.name()))
                .map(Recipe::name)
                .limit(COMPLETIONS)
                .toList();
    }

    /** The recipes that fit a wish: by kind and name, or, when something is typed, best first. */
    List<RecipeRow> rows(RecipeSearch.Wanted wanted) {
        Stream<RecipeRow> rows = ware.search().find(wanted).stream()
                .flatMap(hit -> find(hit.recipe()).map(recipe -> row(recipe, hit.excerpt())).stream());
        return wanted.text().isBlank()
                ? rows.sorted(Comparator.comparing(RecipeRow::kind)
                                .thenComparing(RecipeRow::name, String.CASE_INSENSITIVE_ORDER))
                        .toList()
                : rows.toList();
    }

    /** The list for a filter, and the stations it can be narrowed to. */
    record Listing(List<RecipeRow> rows, List<String> stations) {}

    Listing list(RecipeFilter filter) {
        return new Listing(rows(filter.wanted()), ware.search().stations());
    }

    /** Whether the list is read so quickly that nobody waits for it. */
    boolean isShort() {
        return ware.recipes().all().size() <= SHORT;
    }

    Change archive(String id, boolean archived) {
        return ware.book().archive(id, archived);
    }

    private RecipeRow row(Recipe recipe, String found) {
        return new RecipeRow(recipe.id(), recipe.name(), recipe.kind(), recipe.tested(), found);
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

    /** Looks a recipe over. */
    Checked check(Recipe recipe) {
        return new Checked(
                recipe.id(),
                ware.book().placed(recipe),
                ware.past().trials().trust(recipe),
                new BalanceText(this).of(ware.scales().balances().of(recipe)));
    }

    /** Whether there is a list that ingredients can be added to. */
    boolean canStart() {
        return ware.others().starter().get().isPresent();
    }

    /** Adds a new ingredient or preparation; answers the item's id. */
    String start(NewItem wanted) {
        ItemStarter starter = ware.others()
                .starter()
                .get()
                .orElseThrow(() -> new MeasureException("The ingredient list is gone; add it there later."));
        if (wanted.missing().item().isEmpty()) {
            return starter.start(wanted.item());
        }
        String item = wanted.missing().item().get();
        starter.prepare(item, wanted.prepared());
        return item;
    }

    /** What a use is measured in without a weight, where that can be written on the ingredient list. */
    Optional<Unweighed> unweighed(Use use) {
        boolean listed = canStart()
                && ware.others()
                        .items()
                        .get()
                        .filter(items -> items.listed().containsKey(use.item()))
                        .isPresent();
        return listed ? Unweighed.of(use, words) : Optional.empty();
    }

    /** Writes a missing measure where it belongs; answers the item's id. */
    String weigh(Unweighed missing, Equivalence measure) {
        ItemStarter starter = ware.others()
                .starter()
                .get()
                .orElseThrow(() -> new MeasureException("The ingredient list is gone; add it there later."));
        String id = missing.item().id();
        missing.preparation()
                .ifPresentOrElse(
                        preparation -> starter.prepare(id, Unweighed.with(preparation, measure)),
                        () -> starter.measure(id, measure));
        return id;
    }

    /** The line as typed under the names that were given to what it misses. */
    String renamed(String typed, NewItem filled) {
        boolean item = filled.missing().item().isEmpty();
        String name = item ? filled.name() : filled.preparation();
        return typed.replace(filled.missing().name(), name.strip());
    }

    /** A line about something on no list, where there is no list of ingredients. */
    Optional<Use> unlisted(Missing missing) {
        return missing.quantity()
                .map(quantity -> new Use(
                        missing.item().orElseGet(() -> words.id(missing.name())),
                        quantity,
                        Optional.of(missing.preparation()).filter(as -> !as.isEmpty()),
                        missing.preparation().isEmpty() ? Basis.AP : Basis.EP));
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

    String shown(String item) {
        return words.find(item).map(known -> known.name()).orElse(item);
    }

    String text(Quantity quantity) {
        MeasureStyle style = ware.others()
                .kitchen()
                .get()
                .map(Kitchen::house)
                .map(house -> house.measures())
                .orElse(MeasureStyle.METRIC);
        return QuantityText.format(quantity, style);
    }

    ZoneId zone() {
        return ware.others()
                .kitchen()
                .get()
                .map(Kitchen::house)
                .map(House::zone)
                .orElse(ZoneId.systemDefault());
    }

    static String sentences(Change.Refused refused) {
        return refused.problems().stream().map(Problem::text).collect(Collectors.joining(" "));
    }
}
