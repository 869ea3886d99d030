package etamine.recipes.internal.line;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.recipes.internal.ChangingBook;
import etamine.recipes.internal.RecipeGraph;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The index of names, mended after each of many changes drawn by chance, beside one made from nothing. */
class MendedNamesTest {

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void agreeWithBeginningAnewAfterEveryChange(long seed) {
        ChangingBook book = new ChangingBook(seed);
        ItemNames mended = names(book);
        for (int i = 0; i < 150; i++) {
            book.change();
            RecipeGraph graph = RecipeGraph.of(book.recipes());
            mended = mended.with(book.items(graph), graph.archivedItems());
            ItemNames fresh = names(book);
            for (String id : book.everything()) {
                assertThat(mended.byName(id)).as(id).isEqualTo(fresh.byName(id));
            }
            for (String typed : List.of("onion", "onions", "onion, red", "loaf", "leaves", "celeri", "brown")) {
                assertThat(mended.byName(typed)).as(typed).isEqualTo(fresh.byName(typed));
            }
            assertThat(mended.near("onoins", 9)).isEqualTo(fresh.near("onoins", 9));
            assertThat(mended.completions("on"))
                    .containsExactlyElementsOf(fresh.completions("on").toList());
        }
    }

    private static ItemNames names(ChangingBook book) {
        RecipeGraph graph = RecipeGraph.of(book.recipes());
        return new ItemNames(book.items(graph), graph.archivedItems());
    }
}
