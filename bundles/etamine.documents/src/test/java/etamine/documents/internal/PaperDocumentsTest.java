package etamine.documents.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.documents.Block;
import etamine.documents.Documents;
import etamine.documents.Paper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaperDocumentsTest {
    private static final List<Block.Column> COLUMNS =
            List.of(new Block.Column("Article", 5, false), new Block.Column("Packs", 1, true));
    private final Documents documents = new PaperDocuments();

    @TempDir
    Path folder;

    @Test
    void writesAllOfAPaperIntoThePdfInReadingOrder() throws IOException {
        Path file = folder.resolve("order.pdf");
        documents.pdf(paper(List.of(List.of("Crème fraîche, 30 %", "2"))), file);
        assertThat(text(file).lines().map(String::strip))
                .containsExactly(
                        "Order 12",
                        "for Friday",
                        "Deliver to The Back Door",
                        "Lines",
                        "Article Packs",
                        "Crème fraîche, 30 % 2",
                        "Total 2",
                        "Please confirm.",
                        "Etamine 1 / 1");
    }

    @Test
    void repeatsTheHeadingsOnEveryPageOfALongGrid() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 1; i <= 200; i++) {
            rows.add(List.of("Article number " + i, Integer.toString(i)));
        }
        Path file = folder.resolve("long.pdf");
        documents.pdf(paper(rows), file);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            int pages = pdf.getNumberOfPages();
            assertThat(pages).isGreaterThan(3);
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page < pages; page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(pdf)).contains("Article Packs").contains(page + " / " + pages);
            }
        }
        assertThat(text(file)).contains("Article number 1 1").contains("Article number 200 200");
    }

    @Test
    void embedsTheFontSoThatEveryReaderShowsTheSame() throws IOException {
        Path file = folder.resolve("fonts.pdf");
        documents.pdf(paper(List.of(List.of("Ξίδι, Sýr, Борщ", "1"))), file);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            var resources = pdf.getPage(0).getResources();
            for (var name : resources.getFontNames()) {
                PDFont font = resources.getFont(name);
                assertThat(font.isEmbedded()).isTrue();
            }
        }
        assertThat(text(file)).contains("Ξίδι, Sýr, Борщ");
    }

    @Test
    void breaksWordsLongerThanTheirCellAndSurvivesOddCharacters() throws IOException {
        Path file = folder.resolve("odd.pdf");
        String endless = "x".repeat(5_000);
        documents.pdf(paper(List.of(List.of(endless + "\u0000\uD83C\uDF72\t", "1"))), file);
        assertThat(text(file).replace("Boxes", "").replaceAll("[^x]", "")).hasSize(5_000);
    }

    @Test
    void givesTheSameBytesForTheSamePaper() throws IOException {
        documents.pdf(paper(List.of(List.of("a", "1"))), folder.resolve("1.pdf"));
        documents.pdf(paper(List.of(List.of("a", "1"))), folder.resolve("2.pdf"));
        assertThat(folder.resolve("1.pdf")).hasSameBinaryContentAs(folder.resolve("2.pdf"));
    }

    @Test
    void leavesNoHalfWrittenFileBehindWhenItFails() throws IOException {
        Path taken = Files.createDirectories(folder.resolve("taken.csv").resolve("inside"));
        assertThatThrownBy(() -> documents.csv(new Block.Grid(COLUMNS, List.of(), List.of()), taken.getParent()))
                .isInstanceOf(IOException.class);
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(taken.getParent());
        }
    }

    /** Rules of RFC 4180 (2005), section 2: CRLF, quotes doubled - published. */
    @Test
    void writesCsvThatOtherProgramsReadAndSpreadsheetsDoNotRun() throws IOException {
        Path file = folder.resolve("order.csv");
        documents.csv(
                new Block.Grid(
                        COLUMNS,
                        List.of(
                                List.of("say \"hi\", twice", "-3"),
                                List.of("=HYPERLINK(1)", "+1.5"),
                                List.of("@x", "-2+3")),
                        List.of()),
                file);
        assertThat(Files.readString(file, StandardCharsets.UTF_8))
                .isEqualTo("Article,Packs\r\n\"say \"\"hi\"\", twice\",-3\r\n'=HYPERLINK(1),+1.5\r\n'@x,'-2+3\r\n");
    }

    @Test
    void escapesWhatHtmlWouldRun() throws IOException {
        Path file = folder.resolve("page.html");
        documents.html(paper(List.of(List.of("<script>alert('x')</script>", "1"))), file);
        assertThat(Files.readString(file))
                .doesNotContain("<script>")
                .contains("&lt;script&gt;")
                .contains("<h1>Order 12</h1>");
    }

    private static Paper paper(List<List<String>> rows) {
        return new Paper(
                "Order 12",
                "for Friday",
                List.of(
                        new Block.Facts(List.of(new Block.Facts.Pair("Deliver to", "The Back Door"))),
                        new Block.Heading("Lines"),
                        new Block.Grid(COLUMNS, rows, List.of("Total", "2")),
                        new Block.Text("Please confirm.")),
                "Etamine",
                Paper.Size.A4);
    }

    private static String text(Path file) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(pdf);
        }
    }
}
