package etamine.recipes.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.recipes.internal.form.RecipeForm;
import etamine.recipes.internal.rule.RecipeRules;
import etamine.storage.Document;
import etamine.testing.VolatileBook;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RecipeGraphTest {
    private static final Quantity KILO = Quantity.parse("1 kg");

    private static Recipe recipe(String id, String makes, String... uses) {
        return new Recipe(
                id,
                id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1),
                Kind.COMPONENT,
                List.of(uses).stream()
                        .map(item -> new Use(item, KILO, Optional.empty(), Basis.AP))
                        .toList(),
                List.of(makes.split(" ")).stream()
                        .map(item -> new Make(item, KILO, Optional.empty()))
                        .toList(),
                Optional.empty(),
                Optional.empty(),
                0,
                List.of(),
                Optional.empty(),
                "");
    }

    private static RecipeGraph graph(Recipe... recipes) {
        Map<String, Recipe> byId = new TreeMap<>();
        List.of(recipes).forEach(recipe -> byId.put(recipe.id(), recipe));
        return RecipeGraph.of(byId);
    }

    @Test
    void putsMakersBeforeUsers() {
        RecipeGraph graph = graph(
                recipe("a-plate", "a-plate", "jus"),
                recipe("jus", "jus", "stock"),
                recipe("stock", "stock", "bones"),
                recipe("z-breakdown", "breast bones", "fowl"));

        assertThat(graph.inOrder()).extracting(Recipe::id).containsExactly("z-breakdown", "stock", "jus", "a-plate");
        assertThat(graph.loopThrough("jus")).isEmpty();
    }

    @Test
    void namesTheWholeWayRoundALoop() {
        RecipeGraph graph =
                graph(recipe("stock", "stock", "jus"), recipe("jus", "jus", "stock"), recipe("plate", "plate", "jus"));

        assertThat(graph.loopThrough("stock").map(RecipeRules::loopText).orElse(""))
                .contains("Stock -> Jus -> Stock");
        assertThat(graph.loopThrough("plate")).as("behind a loop, not in it").isEmpty();
        assertThat(graph.inOrder()).hasSize(3);
    }

    @Test
    void seesARecipeThatUsesWhatItMakes() {
        assertThat(graph(recipe("leaven", "leaven", "leaven"))
                        .loopThrough("leaven")
                        .map(RecipeRules::loopText)
                        .orElse(""))
                .contains("Leaven -> Leaven");
    }

    @Test
    void prefersTheMakerOfTheItemsOwnName() {
        RecipeGraph graph = graph(recipe("breakdown", "stock meat", "fowl"), recipe("stock", "stock", "bones"));

        assertThat(graph.maker("stock").map(Recipe::id)).contains("stock");
        assertThat(graph.maker("meat").map(Recipe::id)).contains("breakdown");
        assertThat(graph.maker("fowl")).isEmpty();
        assertThat(graph.makersOf("stock")).hasSize(2);
    }

    @Test
    void listsTheUsersOfAnItemOnceEach() {
        RecipeGraph graph = graph(recipe("b", "b", "salt", "salt"), recipe("a", "a", "salt"));

        assertThat(graph.usersOf("salt")).extracting(Recipe::id).containsExactly("a", "b");
    }

    @Test
    void loadsAndOrdersTenThousandRecipesInWellUnderASecond() {
        VolatileBook book = new VolatileBook();
        RecipeForm form = new RecipeForm();
        Map<String, String> documents = new HashMap<>();
        for (int i = 0; i < 10_000; i++) {
            int level = i / 2500;
            String[] uses = IntStream.range(0, 12)
                    .mapToObj(line -> level > 0 && line < 4 ? "r" + ((level - 1) * 2500 + line * 7) : "item" + line)
                    .toArray(String[]::new);
            documents.put("r" + i, form.write(recipe("r" + i, "r" + i, uses)));
        }
        book.write("Fill", transaction -> {
            documents.forEach((id, json) -> transaction.save("recipes", id, Document.ANY, json));
            return 0;
        });
        long fastest =
                IntStream.range(0, 4).mapToLong(run -> loadingTime(book)).min().orElseThrow();

        // processor time of the thread, since a busy machine says nothing about the program
        assertThat(Duration.ofNanos(fastest)).isLessThan(Duration.ofSeconds(1));
    }

    private static long loadingTime(VolatileBook book) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long start = threads.getCurrentThreadCpuTime();
        RecipeShelf shelf = new RecipeShelf(book);
        assertThat(shelf.graph().inOrder()).hasSize(10_000);
        shelf.close();
        return threads.getCurrentThreadCpuTime() - start;
    }

    @Test
    void keepsTheGraphUntilARecipeChanges() {
        Range range = new Range();
        range.load("{\"id\": \"a\", \"name\": \"A\", \"makes\": [{\"item\": \"a\", \"quantity\": \"1 kg\"}]}");
        RecipeGraph graph = range.shelf.graph();
        range.book.write("Elsewhere", transaction -> transaction.save("other", "x", 0, "{}"));

        assertThat(range.shelf.graph()).isSameAs(graph);
    }

    @Test
    void ordersADeepChainWithoutRecursion() {
        Recipe[] chain = IntStream.range(0, 20_000)
                .mapToObj(i -> recipe("r" + i, "r" + i, "r" + (i + 1)))
                .toArray(Recipe[]::new);

        assertThat(graph(chain).inOrder().get(0).id()).isEqualTo("r19999");
    }
}
