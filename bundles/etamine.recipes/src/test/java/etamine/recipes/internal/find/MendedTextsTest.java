package etamine.recipes.internal.find;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.recipes.internal.ChangingBook;
import etamine.recipes.internal.RecipeGraph;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The texts to search, mended after each of many changes drawn by chance, beside those gathered from nothing. */
class MendedTextsTest {

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void agreeWithBeginningAnewAfterEveryChange(long seed) {
        ChangingBook book = new ChangingBook(seed);
        RecipeTexts mended = RecipeTexts.NONE;
        for (int i = 0; i < 150; i++) {
            RecipeGraph graph = RecipeGraph.of(book.recipes());
            mended = mended.of(graph, book.items(graph));
            assertThat(mended.all())
                    .isEqualTo(RecipeTexts.NONE.of(graph, book.items(graph)).all());
            book.change();
        }
    }
}
