package etamine.documents.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Printout;
import etamine.documents.Block;
import etamine.documents.Paper;
import etamine.documents.Picture;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotosOnPaperTest {
    private final PaperDocuments documents = new PaperDocuments();

    @TempDir
    Path folder;

    @Test
    void stayAsTheyAreWithinThePdf() throws IOException {
        Picture picture = picture(300, 200);
        Path file = folder.resolve("photo.pdf");
        documents.pdf(paper(new Block.Photo(picture, "A plate", 200)), file);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            var resources = pdf.getPage(0).getResources();
            List<PDImageXObject> images = new ArrayList<>();
            for (var name : resources.getXObjectNames()) {
                images.add((PDImageXObject) resources.getXObject(name));
            }
            assertThat(images).hasSize(1);
            assertThat(images.get(0).getWidth()).isEqualTo(300);
            assertThat(images.get(0).getCOSObject().createRawInputStream().readAllBytes())
                    .isEqualTo(picture.bytes());
        }
    }

    /** An A4 sheet is 595 points wide; at 72 dots per inch one dot is one point. */
    @Test
    void areNoTallerThanTheyMayBeAndUprightInTheirColumn() throws IOException {
        Block.Photo photo = new Block.Photo(picture(300, 300), "", 120);
        BufferedImage page = drawn(paper(new Block.Beside(List.of(new Block.Text("Left")), List.of(photo), 60)));
        int top = 0;
        int bottom = 0;
        int x = 400;
        for (int y = 0; y < page.getHeight(); y++) {
            if (GivenPictures.near(page.getRGB(x, y), GivenPictures.RED) && top == 0) {
                top = y;
            }
            bottom = GivenPictures.near(page.getRGB(x, y), GivenPictures.BLUE) ? y : bottom;
        }
        assertThat(top).isPositive();
        assertThat(bottom - top + 1).isBetween(118, 121);
    }

    @Test
    void goOnToTheNextPageWhole() throws IOException {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            blocks.add(new Block.Text("Line " + i));
        }
        blocks.add(new Block.Photo(picture(100, 200), "", 5000));
        Path file = folder.resolve("long.pdf");
        documents.pdf(paper(blocks.toArray(Block[]::new)), file);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
        }
    }

    @Test
    void standInTheWebPageItselfWithTheirText() throws IOException {
        Picture picture = picture(30, 20);
        Path file = folder.resolve("photo.html");
        documents.html(paper(new Block.Photo(picture, "\"Jus\" <right>", 200)), file);
        assertThat(Files.readString(file))
                .contains("<img alt=\"&quot;Jus&quot; &lt;right&gt;\" width=\"30\" height=\"20\"")
                .contains("src=\"data:image/jpeg;base64," + picture.base64() + "\"/>")
                .doesNotContain("http");
    }

    private BufferedImage drawn(Paper paper) throws IOException {
        List<BufferedImage> pages = new ArrayList<>();
        Printout printout = documents.printout(paper);
        printout.pages(72, (page, of, png) -> pages.add(ImageIO.read(new ByteArrayInputStream(png))));
        return pages.get(0);
    }

    private static Picture picture(int width, int height) throws IOException {
        return GivenPictures.ready(
                new CameraPictures().take(GivenPictures.file(GivenPictures.quarters(width, height), "png")));
    }

    private static Paper paper(Block... blocks) {
        return new Paper("Plate", "", List.of(blocks), "", Paper.Size.A4);
    }
}
