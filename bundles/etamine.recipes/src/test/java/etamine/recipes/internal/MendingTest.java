package etamine.recipes.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is derived of the whole book, mended after each of many changes drawn by chance, beside the same made from nothing:
 * they agree after every one.
 */
class MendingTest {
    private static final int CHANGES = 150;

    private record Derived(RecipeGraph graph, FactRoll roll, SortedMap<String, Item> made) {
        static Derived of(ChangingBook book) {
            RecipeGraph graph = RecipeGraph.of(book.recipes());
            FactRoll roll = FactRoll.of(graph, book.listed());
            return new Derived(graph, roll, MadeThings.of(roll));
        }

        Derived with(ChangingBook book) {
            RecipeGraph now = graph.with(book.recipes());
            FactRoll rolled = roll.with(now, book.listed());
            return new Derived(now, rolled, MadeThings.of(rolled, made, roll));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void agreesWithBeginningAnewAfterEveryChange(long seed) {
        ChangingBook book = new ChangingBook(seed);
        Derived mended = Derived.of(book);
        Map<String, Recipe> sound = book.recipes();
        int loops = 0;
        for (int i = 0; i < CHANGES; i++) {
            book.change();
            mended = mended.with(book);
            Derived fresh = Derived.of(book);
            assertSame(mended.graph, fresh.graph, book.everything());
            assertSame(mended.roll, fresh.roll, book.everything());
            assertThat(mended.made).isEqualTo(fresh.made);
            loops += fresh.graph.hasLoops() ? 1 : 0;
            sound = fresh.graph.hasLoops() ? sound : book.recipes();
            book.mayGoBackTo(sound);
        }
        assertThat(loops).as("changes after which there was a loop").isBetween(1, CHANGES / 2);
    }

    private static void assertSame(RecipeGraph mended, RecipeGraph fresh, Set<String> everything) {
        assertThat(mended.recipes()).isEqualTo(fresh.recipes());
        assertThat(mended.archivedItems()).isEqualTo(fresh.archivedItems());
        assertThat(mended.hasLoops()).isEqualTo(fresh.hasLoops());
        everything.forEach(id -> {
            assertThat(mended.makersOf(id)).as(id).isEqualTo(fresh.makersOf(id));
            assertThat(mended.usersOf(id)).as(id).isEqualTo(fresh.usersOf(id));
        });
        assertThat(mended.inOrder()).containsExactlyInAnyOrderElementsOf(fresh.inOrder());
        if (!mended.hasLoops()) {
            assertMakersComeFirst(mended);
        }
    }

    private static void assertMakersComeFirst(RecipeGraph graph) {
        Set<String> before = new HashSet<>();
        graph.inOrder().forEach(recipe -> {
            recipe.uses()
                    .forEach(use -> graph.makersOf(use.item())
                            .forEach(maker -> assertThat(before).contains(maker.id())));
            before.add(recipe.id());
        });
    }

    private static void assertSame(FactRoll mended, FactRoll fresh, Set<String> everything) {
        RolledFacts read = new RolledFacts(mended.facts());
        RolledFacts freshly = new RolledFacts(fresh.facts());
        everything.forEach(id -> assertThat(read.read(mended.of(id))).as(id).isEqualTo(freshly.read(fresh.of(id))));
    }

    @Test
    void keepsWhatAChangeOfWordsDoesNotTouch() {
        Range range = new Range();
        for (int i = 0; i < 40; i++) {
            range.load(
                    "{\"id\": \"r%1$d\", \"name\": \"R%1$d\", \"makes\": [{\"item\": \"r%1$d\", \"quantity\": \"1 kg\"}]}"
                            .formatted(i));
        }
        Map<String, Item> made = range.made.items();
        Set<String> archived = range.made.archived();
        Recipe before = range.recipes.find("r7").orElseThrow();
        range.writing.save(before.withNotes("Stir."), range.writing.revision("r7"));

        assertThat(range.recipes.find("r7").orElseThrow().notes()).isEqualTo("Stir.");
        assertThat(range.made.items()).isSameAs(made);
        assertThat(range.made.archived()).isSameAs(archived);
    }
}
