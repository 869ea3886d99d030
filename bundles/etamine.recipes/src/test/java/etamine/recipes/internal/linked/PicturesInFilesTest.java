package etamine.recipes.internal.linked;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.base.Progress;
import etamine.recipes.FoundRecipes;
import etamine.recipes.FoundRecipes.Presence;
import etamine.recipes.RecipePhotos.Photo;
import etamine.recipes.internal.Range;
import etamine.recipes.internal.photo.GivenPhotos;
import java.awt.Color;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PicturesInFilesTest {
    private static final String SOUP = "{\"id\": \"soup\", \"name\": \"Soup\", \"uses\": [{\"item\": \"leek\","
            + " \"quantity\": \"1 kg\"}], \"makes\": [{\"item\": \"soup\", \"quantity\": \"1 kg\"}]}";

    @TempDir
    Path folder;

    private final Kitchen first = new Kitchen();
    private final Kitchen second = new Kitchen();

    /** A book with files, photos and a leek. */
    private static final class Kitchen {
        final Range range = new Range();
        final GivenPhotos given = new GivenPhotos(range);
        final GateExchange gate = new GateExchange(range, given.section);
        final JsonLdRecipes files = LinkedFiles.files(range, gate);

        Kitchen() {
            range.item("leek", "kg");
            files.bindPhotos(given.photos);
            files.bindPictures(given.pictures);
        }
    }

    private FoundRecipes read(String image) throws IOException {
        Path file = Files.writeString(
                folder.resolve("foreign.json"),
                "{\"@type\": \"Recipe\", \"name\": \"Broth\", \"recipeYield\": \"4\", \"recipeIngredient\": [\"1 kg leek\"], \"image\": "
                        + image + "}");
        return second.files.read(file, Progress.unseen());
    }

    @Test
    void comeBackAsTheSamePhotoWithItsText() throws IOException {
        first.range.load(SOUP);
        first.given.photos.attach("soup", GivenPhotos.file(Color.RED), "A red bowl");
        Path file = folder.resolve("soup.jsonld");
        first.files.write(List.of("soup"), file);
        JsonNode image = Range.json(Files.readString(file)).path("image");
        Photo photo = first.given.photos.find("soup").orElseThrow();
        assertThat(image.path("contentUrl").asText()).isEqualTo("data:image/jpeg;base64," + photo.base64());

        FoundRecipes found = second.files.read(file, Progress.unseen());
        assertThat(found.recipes().get(0).remarks()).isEmpty();
        assertThat(second.files.take(found, Set.of(1), false, Progress.unseen()).problems())
                .isEmpty();
        assertThat(second.given.photos.find("soup")).contains(photo);
        assertThat(first.files.read(file, Progress.unseen()).recipes().get(0).presence())
                .isEqualTo(Presence.SAME);
    }

    @Test
    void areTakenInWhenTheyStandInTheFile() throws IOException {
        String data = "data:image/png;base64," + Base64.getEncoder().encodeToString(GivenPhotos.file(Color.BLUE));
        FoundRecipes found = read("[\"https://picture.example/x.png\", \"" + data + "\"]");
        second.files.take(found, Set.of(1), false, Progress.unseen());
        assertThat(second.given.photos.find("broth")).map(Photo::width).contains(60);
        assertThat(second.range.book.history().undo()).isPresent();
        assertThat(second.range.book.shelf("photos").ids()).isEmpty();
    }

    @Test
    void areNeverFetchedAndSaidToBeMissing() throws IOException {
        assertThat(read("\"https://picture.example/x.png\"").recipes().get(0).remarks())
                .singleElement()
                .asString()
                .contains("https://picture.example/x.png", "never fetched", "add it");
        assertThat(read("{\"@type\": \"ImageObject\", \"url\": \"https://picture.example/y.png\"}")
                        .recipes()
                        .get(0)
                        .remarks())
                .singleElement()
                .asString()
                .contains("y.png");
    }

    @Test
    void areLeftOutWithTheReasonWhenTheyAreNone() throws IOException {
        for (String image : List.of("data:image/png;base64,%%%", "data:image/png,abc", "data:text/html;base64,PGI+")) {
            FoundRecipes found = read("\"" + image + "\"");
            assertThat(found.recipes().get(0).remarks())
                    .singleElement()
                    .asString()
                    .startsWith("Its picture is left out");
            assertThat(found.recipes().get(0).photo()).isEmpty();
        }
    }
}
