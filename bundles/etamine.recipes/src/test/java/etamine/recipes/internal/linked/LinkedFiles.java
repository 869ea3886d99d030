package etamine.recipes.internal.linked;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Progress;
import etamine.recipes.FoundRecipes;
import etamine.recipes.FoundRecipes.Found;
import etamine.recipes.internal.Range;
import etamine.recipes.internal.allergen.RolledAllergens;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A kitchen with three ingredients, and files of recipes as JSON-LD beside it. */
abstract class LinkedFiles {
    final Range range = new Range();
    final GateExchange gate = new GateExchange(range);
    final JsonLdRecipes files = files(range, gate);

    @TempDir
    Path folder;

    @BeforeEach
    void fillTheList() {
        range.item("celeriac", "kg", List.of(Range.prepared("diced", "0.74", "1 cup = 156 g")));
        range.item("cream", "l", List.of(), "1 l = 1006 g");
        range.item("egg", "ea");
    }

    /** Recipes of that kitchen as JSON-LD; what is taken over goes through that gate. */
    static JsonLdRecipes files(Range range, GateExchange gate) {
        return new JsonLdRecipes(
                range.shelf,
                range::known,
                range.made,
                range.lines,
                new RolledAllergens(range::known, range.made),
                gate);
    }

    Path file(String content) throws IOException {
        Path file = folder.resolve("file.jsonld");
        Files.write(file, content.getBytes(StandardCharsets.UTF_8));
        return file;
    }

    FoundRecipes read(Path file) {
        return files.read(file, Progress.unseen());
    }

    Found foreign(String content) throws IOException {
        FoundRecipes found = read(file(content));
        assertThat(found.problems()).isEmpty();
        return found.recipes().get(0);
    }
}
