package etamine.recipes.internal.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Problem;
import etamine.recipes.Change;
import etamine.recipes.Difference;
import etamine.recipes.RecipePhotos.Photo;
import etamine.recipes.internal.Range;
import java.awt.Color;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookPhotosTest {
    private static final byte[] RED = GivenPhotos.file(Color.RED);
    private static final byte[] BLUE = GivenPhotos.file(Color.BLUE);

    private final Range range = new Range();
    private final GivenPhotos given = new GivenPhotos(range);
    private final BookPhotos photos = given.photos;

    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        range.item("leek", "kg");
        range.load(recipe("soup"));
    }

    private static String recipe(String id) {
        return "{\"id\": \"" + id + "\", \"name\": \"Soup\", \"x-mark\": \"7\","
                + " \"uses\": [{\"item\": \"leek\", \"quantity\": \"1 kg\"}],"
                + " \"makes\": [{\"item\": \"" + id + "\", \"quantity\": \"1 kg\"}]}";
    }

    private List<String> kept() {
        return range.book.shelf("photos").ids();
    }

    private String named(String recipe) {
        return range.recipe(recipe).photo().orElseThrow();
    }

    @Test
    void givesARecipeItsPhotoInOneChange() {
        long before = range.book.revision();
        assertThat(photos.attach("soup", RED, "A red bowl")).isEqualTo(new Change.Done("soup", 2));
        assertThat(range.book.revision()).isEqualTo(before + 1);
        Photo photo = photos.find("soup").orElseThrow();
        assertThat(photo.id()).isEqualTo(named("soup"));
        assertThat(photo.text()).isEqualTo("A red bowl");
        assertThat(photo.width()).isEqualTo(60);
        assertThat(photo.height()).isEqualTo(40);
        assertThat(range.book.shelf("recipes").get("soup").orElseThrow().json()).contains("\"x-mark\":\"7\"");
        assertThat(range.book.history().undoable()).contains("Add photo of Soup");
    }

    @Test
    void replacesAndRemovesPhotosWithWhatNobodyNamesAnyMore() {
        photos.attach("soup", RED, "");
        String red = named("soup");
        photos.attach("soup", BLUE, "");
        assertThat(named("soup")).isNotEqualTo(red);
        assertThat(kept()).containsExactly(named("soup"));
        photos.remove("soup");
        assertThat(range.recipe("soup").photo()).isEmpty();
        assertThat(photos.find("soup")).isEmpty();
        assertThat(kept()).isEmpty();
    }

    @Test
    void takesEveryChangeBackWithThePhoto() {
        photos.attach("soup", RED, "red");
        String red = named("soup");
        photos.attach("soup", BLUE, "blue");
        photos.remove("soup");
        range.book.history().undo();
        assertThat(photos.find("soup")).map(Photo::text).contains("blue");
        range.book.history().undo();
        assertThat(photos.find("soup")).map(Photo::text).contains("red");
        assertThat(kept()).containsExactly(red);
        range.book.history().undo();
        assertThat(photos.find("soup")).isEmpty();
        assertThat(kept()).isEmpty();
        range.book.history().redo();
        assertThat(photos.find("soup")).map(Photo::text).contains("red");
    }

    @Test
    void bringsThePhotoBackWithAFormerRevision() {
        photos.attach("soup", RED, "red");
        String red = named("soup");
        photos.attach("soup", BLUE, "");
        range.revisions.restore("soup", 2);
        assertThat(named("soup")).isEqualTo(red);
        assertThat(photos.find("soup")).map(Photo::text).contains("red");
        assertThat(kept()).containsExactly(red);
        range.revisions.restore("soup", 1);
        assertThat(kept()).isEmpty();
    }

    @Test
    void saysAmongTheDifferencesThatThePhotoChanged() {
        photos.attach("soup", RED, "");
        assertThat(range.revisions.between(range.recipe("soup").withPhoto(Optional.empty()), range.recipe("soup")))
                .extracting(Difference::where)
                .containsExactly("Photo");
    }

    @Test
    void sharesAPhotoAmongCopiesUntilTheLastIsGone() {
        photos.attach("soup", RED, "");
        range.writing.copy("soup", "Second soup");
        assertThat(kept()).hasSize(1);
        range.writing.remove("soup");
        assertThat(photos.find("second-soup")).isPresent();
        range.writing.remove("second-soup");
        assertThat(kept()).isEmpty();
        range.book.history().undo();
        assertThat(photos.find("second-soup")).isPresent();
    }

    @Test
    void keepsTheSamePictureOnceAndWhatIsSaidOfIt() {
        photos.attach("soup", RED, "A red bowl");
        range.load(recipe("broth"));
        photos.attach("broth", RED, "");
        assertThat(kept()).hasSize(1);
        assertThat(photos.find("broth")).map(Photo::text).contains("A red bowl");
        photos.describe("broth", "A bowl");
        assertThat(photos.find("soup")).map(Photo::text).contains("A bowl");
        photos.describe("broth", "");
        assertThat(photos.find("soup")).map(Photo::text).contains("");
    }

    @Test
    void refusesWithASentenceAndChangesNothing() throws IOException {
        long before = range.book.revision();
        assertThat(refusal(photos.attach("soup", new byte[] {1, 2, 3}, ""))).contains("save it as JPEG");
        assertThat(refusal(photos.attach("soup", folder.resolve("none.jpg"), "")))
                .contains("There is no file");
        assertThat(refusal(photos.attach("soup", folder, ""))).contains("folder");
        assertThat(refusal(photos.attach("nothing", RED, ""))).contains("no recipe");
        assertThat(refusal(photos.describe("soup", "A bowl"))).contains("no photo");
        Path large = folder.resolve("large.png");
        Files.write(large, new byte[26 * 1024 * 1024]);
        assertThat(refusal(photos.attach("soup", large, ""))).contains("25 MB");
        assertThat(range.book.revision()).isEqualTo(before);
        assertThat(photos.remove("soup")).isInstanceOf(Change.Done.class);
        assertThat(range.book.revision()).isEqualTo(before);
    }

    @Test
    void writesACopyAndReadsItBackAsTheSamePhoto() throws IOException {
        photos.attach("soup", RED, "");
        Path copy = folder.resolve("copy.jpg");
        photos.save("soup", copy);
        assertThat(Files.readAllBytes(copy))
                .isEqualTo(photos.find("soup").orElseThrow().bytes());
        photos.remove("soup");
        assertThatThrownBy(() -> photos.save("soup", copy)).isInstanceOf(IOException.class);
    }

    @Test
    void keepsThePhotoThroughEditsOfTheRecipe() {
        photos.attach("soup", RED, "");
        String red = named("soup");
        range.writing.save(range.recipe("soup").withName("Leek soup"), range.writing.revision("soup"));
        assertThat(named("soup")).isEqualTo(red);
        assertThat(range.scaling
                        .times(range.recipe("soup"), etamine.measures.Ratio.of(2))
                        .photo())
                .contains(red);
        assertThat(photos.find("soup")).isPresent();
    }

    private static String refusal(Change change) {
        assertThat(change).isInstanceOf(Change.Refused.class);
        return ((Change.Refused) change).problems().stream().map(Problem::text).reduce("", String::concat);
    }
}
