package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Subject;
import etamine.kitchen.recipe.Kind;
import etamine.recipes.RecipePhotos.Photo;
import etamine.testing.DisplayRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

class PhotoSectionTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private final Stove stove = new Stove();

    @TempDir
    Path folder;

    private Shell shell;
    private SetFrame frame;
    private RecipesBench bench;

    @BeforeEach
    void open() {
        shell = DISPLAY.shell(1000, 900);
        frame = new SetFrame(shell);
        bench = new RecipesBench(shell, frame, stove.ware);
        shell.open();
        stove.model.add("Soup", Kind.COMPONENT);
        bench.refresh();
        bench.show(new Subject("recipe", "soup"));
        DISPLAY.settle();
    }

    private Link links() {
        return DISPLAY.find(shell, "photo:links", Link.class);
    }

    private PhotoCanvas canvas() {
        return DISPLAY.find(shell, "photo", PhotoCanvas.class);
    }

    private void follow(String link) {
        Event event = new Event();
        event.text = link;
        links().notifyListeners(SWT.Selection, event);
        DISPLAY.settle();
    }

    private Path picture() throws IOException {
        ImageData data = new ImageData(400, 200, 24, new PaletteData(0xff0000, 0xff00, 0xff));
        for (int i = 0; i < 400 * 200; i++) {
            data.setPixel(i % 400, i / 400, 0x4080c0);
        }
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {data};
        Path file = folder.resolve("plate.png");
        loader.save(file.toString(), SWT.IMAGE_PNG);
        return file;
    }

    private void drop(Path file) {
        new PhotoIntake(frame, bytes -> {}, dropped -> stove.photos.attach("soup", dropped, ""))
                .dropped(new String[] {file.toString()});
        bench.refresh();
        DISPLAY.settle();
    }

    @Test
    void isOneQuietLineWithoutAPhoto() {
        assertThat(links().getText()).contains("Add a photo");
        assertThat(canvas().getVisible()).isFalse();
        assertThat(links().getParent().getParent().getSize().y).isLessThan(40);
    }

    @Test
    void showsThePhotoInItsShapeWithItsTextAsName() throws IOException {
        drop(picture());
        assertThat(canvas().isFilled()).isTrue();
        assertThat(canvas().getVisible()).isTrue();
        assertThat(canvas().getSize().x).isEqualTo(234);
        assertThat(canvas().getSize().y).isEqualTo(119);
        assertThat(canvas().spoken()).isEqualTo("Photo of Soup");
        Text text = DISPLAY.find(shell, "field:photo-text", Text.class);
        text.setFocus();
        text.setText("A blue bowl");
        text.notifyListeners(SWT.DefaultSelection, new Event());
        canvas().setFocus();
        DISPLAY.settle();
        assertThat(stove.photos.find("soup")).map(Photo::text).contains("A blue bowl");
        assertThat(canvas().spoken()).isEqualTo("A blue bowl");
    }

    @Test
    void opensTheLargerViewFromTheKeyboardAndClosesIt() throws IOException {
        drop(picture());
        DISPLAY.key(canvas(), SWT.CR, SWT.CR, 0);
        Shell large = List.of(shell.getShells()).get(0);
        PhotoCanvas shown = DISPLAY.find(large, "photo:large", PhotoCanvas.class);
        assertThat(shown.isFilled()).isTrue();
        DISPLAY.key(shown, SWT.CR, SWT.CR, 0);
        assertThat(large.isDisposed()).isTrue();
    }

    @Test
    void removesThePhotoAndGivesItsRoomBack() throws IOException {
        drop(picture());
        follow(PhotoModel.REMOVE);
        assertThat(stove.photos.find("soup")).isEmpty();
        assertThat(canvas().getVisible()).isFalse();
        assertThat(links().getText()).contains("Add a photo");
        stove.book.history().undo();
        bench.refresh();
        DISPLAY.settle();
        assertThat(canvas().isFilled()).isTrue();
    }

    @Test
    void takesWhatWasPasted() throws IOException {
        ImageData data = new ImageData(picture().toString());
        new PhotoIntake(frame, bytes -> stove.photos.attach("soup", bytes, ""), file -> {}).pasted(data);
        assertThat(stove.photos.find("soup"))
                .matches(photo -> photo.map(Photo::width).equals(Optional.of(400)));
    }

    @Test
    void warnsWhenAFileIsNoPicture() throws IOException {
        Path file = Files.writeString(folder.resolve("plate.jpg"), "no picture");
        PhotoModel model = new PhotoModel(() -> Optional.of(stove.photos));
        assertThat(model.attach("soup", file)).isInstanceOf(etamine.recipes.Change.Refused.class);
        new PhotoIntake(frame, bytes -> {}, dropped -> {}).dropped(null);
        assertThat(frame.told).anyMatch(told -> told.startsWith("warn Only the file of a picture"));
    }

    @Test
    void fitsSizesIntoOneAnotherWithoutMakingThemLarger() {
        assertThat(new PhotoModel.Size(1280, 960).within(230, 130)).isEqualTo(new PhotoModel.Size(173, 130));
        assertThat(new PhotoModel.Size(10, 8).within(230, 130)).isEqualTo(new PhotoModel.Size(10, 8));
        assertThat(new PhotoModel.Size(9000, 1).within(230, 130)).isEqualTo(new PhotoModel.Size(230, 1));
    }

    @Test
    void saysWhenThePhotoThatIsNamedIsNotThere() {
        stove.writing.save(
                stove.recipes.find("soup").orElseThrow().withPhoto(Optional.of("lost")),
                stove.writing.revision("soup"));
        PhotoModel.View view = new PhotoModel(() -> Optional.of(stove.photos))
                .read(stove.recipes.find("soup").orElseThrow(), 200);
        assertThat(view.remark()).contains("not in the book");
        assertThat(view.links()).contains("Add a photo");
    }
}
