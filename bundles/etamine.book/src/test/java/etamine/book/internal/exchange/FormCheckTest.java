package etamine.book.internal.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.storage.Document;
import etamine.testing.VolatileBook;
import java.util.List;
import org.junit.jupiter.api.Test;

class FormCheckTest {
    private final VolatileBook book = new VolatileBook();
    private final FormCheck check = new FormCheck(List.of(new Pantry(book, "pantry")));

    @Test
    void namesADocumentThatDoesNotFitItsSchema() {
        book.write("damage", t -> t.save("pantry", "salt", Document.ANY, "{\"id\":\"salt\",\"amount\":7}"));
        assertThat(check.check()).singleElement().satisfies(problem -> {
            assertThat(problem.where()).isEqualTo("pantry/salt");
            assertThat(problem.text()).startsWith("At /amount: Write this number in quotes");
        });
    }

    @Test
    void isContentWithWhatFits() {
        book.write("fill", t -> t.save("pantry", "salt", Document.ANY, "{\"id\":\"salt\",\"amount\":\"7 kg\"}"));
        assertThat(check.check()).isEmpty();
    }
}
