package etamine.recipes.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.internal.book.RecipeSection;
import etamine.recipes.internal.book.ShelvedRecipes;
import etamine.recipes.internal.form.RecipeForm;
import etamine.recipes.internal.line.TypedLines;
import etamine.recipes.internal.need.GraphRecipes;
import etamine.recipes.internal.revision.ShelfRevisions;
import etamine.recipes.internal.scale.ExactScaling;
import etamine.recipes.internal.text.CardText;
import etamine.recipes.internal.trial.MeasuredTrials;
import etamine.recipes.internal.weight.WeighedBalances;
import etamine.testing.SetFacts;
import etamine.testing.VolatileBook;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The module on a book in memory beside an ingredient list of a test's own. */
public final class Range {
    public final VolatileBook book = new VolatileBook();
    public final RecipeShelf shelf = new RecipeShelf(book);
    private Map<String, Item> listed = Map.of();
    public final MadeItems made = new MadeItems(shelf, this::known);
    public final GraphRecipes recipes = new GraphRecipes(shelf, this::known, made);
    public final ShelvedRecipes writing = new ShelvedRecipes(shelf, this::known, made);
    public final ExactScaling scaling = new ExactScaling(shelf, this::known, made);
    public final RecipeSection section = new RecipeSection(shelf);
    public final TypedLines lines = new TypedLines(this::known, made);
    public final CardText cards = new CardText(this::known, made);
    public final WeighedBalances balances = new WeighedBalances(shelf, this::known, made);
    public final MeasuredTrials trials = new MeasuredTrials(writing, shelf, this::known, made);
    public final ShelfRevisions revisions = new ShelfRevisions(writing, shelf, cards);
    private boolean withList = true;

    public Optional<Items> known() {
        return withList ? Optional.of(new TestList()) : Optional.empty();
    }

    /** A list merged the way the contract says. */
    private final class TestList implements Items {
        @Override
        public Optional<Item> find(String id) {
            return Optional.ofNullable(all().get(id));
        }

        @Override
        public Map<String, Item> listed() {
            return listed;
        }

        @Override
        public Map<String, Item> all() {
            Map<String, Item> all = new TreeMap<>(made.items());
            all.putAll(listed);
            return all;
        }
    }

    /** No ingredient list from now on. */
    public void closeList() {
        withList = false;
    }

    /** Puts an ingredient on the list. */
    public Item item(String id, String countIn, List<Preparation> preparations, String... measures) {
        return named(id, id, Unit.find(countIn).orElseThrow(), preparations, measures);
    }

    /** Puts an ingredient of another name than its id on the list, counted in kilograms. */
    public Item named(String id, String name, List<Preparation> preparations, String... measures) {
        return named(id, name, Unit.KG, preparations, measures);
    }

    private Item named(String id, String name, Unit countIn, List<Preparation> preparations, String... measures) {
        List<Equivalence> own = new ArrayList<>();
        for (String measure : measures) {
            own.add(measure(measure));
        }
        return put(new Item(
                id,
                name,
                "",
                false,
                "",
                Optional.empty(),
                countIn,
                own,
                preparations,
                Allergens.unknown(),
                Optional.empty()));
    }

    public Item item(String id, String countIn) {
        return item(id, countIn, List.of());
    }

    public Item listed(String id) {
        return listed.get(id);
    }

    /** Puts an ingredient with established allergens on the list. */
    public void allergens(String id, Set<String> contains, Set<String> mayContain, boolean known) {
        Item plain = item(id, "g");
        put(new Item(
                id,
                id,
                "",
                false,
                "",
                Optional.empty(),
                plain.countIn(),
                List.of(),
                List.of(),
                new Allergens(contains, mayContain, known),
                Optional.empty()));
    }

    /** Puts an ingredient on the list as it is. */
    public Item put(Item item) {
        Map<String, Item> more = new TreeMap<>(listed);
        more.put(item.id(), item);
        listed = Collections.unmodifiableMap(more);
        return item;
    }

    public static Equivalence measure(String text) {
        String[] sides = text.split(" = ");
        return new Equivalence(Quantity.parse(sides[0]), Quantity.parse(sides[1]));
    }

    public static Preparation prepared(String name, String yield, String... measures) {
        return new Preparation(
                name,
                Ratio.parse(yield),
                List.of(measures).stream().map(Range::measure).toList());
    }

    public static JsonNode json(String text) {
        try {
            return RecipeForm.JSON.readTree(text);
        } catch (JsonProcessingException wrong) {
            throw new IllegalArgumentException(wrong);
        }
    }

    /** Writes entries as a file would, without the checks beside others. */
    public void load(String... entries) {
        List<ExchangeEntry> read = section.read(json("[" + String.join(",", entries) + "]"), new SetFacts());
        read.forEach(entry -> {
            if (!entry.troubles().isEmpty()) {
                throw new IllegalArgumentException(entry.troubles().toString());
            }
        });
        book.write("Load", transaction -> {
            read.forEach(entry -> entry.write(transaction));
            return 0;
        });
    }

    /** What a file of these entries is told, as pointer and sentence. */
    public List<String> troubles(String... entries) {
        SetFacts facts = new SetFacts();
        listed.forEach((id, item) -> facts.put(Item.class, id, item));
        section.recall(facts);
        return section.read(json("[" + String.join(",", entries) + "]"), facts).stream()
                .flatMap(entry -> {
                    List<ExchangeEntry.Trouble> all = new ArrayList<>(entry.troubles());
                    all.addAll(entry.check(facts));
                    return all.stream().map(trouble -> entry.pointer() + trouble.pointer() + " " + trouble.problem());
                })
                .toList();
    }

    /** What a file of these entries is doubted for, as pointer and sentence. */
    public List<String> doubts(String... entries) {
        SetFacts facts = new SetFacts();
        listed.forEach((id, item) -> facts.put(Item.class, id, item));
        section.recall(facts);
        return section.read(json("[" + String.join(",", entries) + "]"), facts).stream()
                .flatMap(entry -> entry.doubts(facts).stream()
                        .map(doubt -> entry.pointer() + doubt.pointer() + " " + doubt.problem()))
                .toList();
    }

    public Recipe recipe(String id) {
        return recipes.find(id).orElseThrow();
    }
}
