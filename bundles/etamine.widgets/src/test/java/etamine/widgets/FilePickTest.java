package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilePickTest {
    private static final List<FilePick.Kind> KINDS =
            List.of(new FilePick.Kind("PDF", "pdf"), new FilePick.Kind("Web page", "html"));

    @ParameterizedTest
    @CsvSource(textBlock = """
            card,       0, card.pdf
            card,       1, card.html
            card,      -1, card.pdf
            card.PDF,   1, card.PDF
            card.html,  0, card.html
            card.v2,    0, card.v2.pdf
            """)
    void givesAFileTheEndingOfTheKindPickedUnlessItHasOne(String typed, int picked, Path file) {
        assertThat(FilePick.ended(typed, KINDS, picked)).isEqualTo(file);
    }

    @Test
    void offersNoNameThatAFileSystemForbids() {
        assertThat(FilePick.fileName("Fowl / cider: \"jus\"?")).isEqualTo("Fowl cider jus");
        assertThat(FilePick.fileName("../../etc")).doesNotContain("/").doesNotStartWith(".");
        assertThat(FilePick.fileName("...")).isEqualTo("untitled");
        assertThat(FilePick.fileName("é".repeat(200))).hasSize(80);
    }
}
