package etamine.documents.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import etamine.documents.Align;
import etamine.documents.Block;
import etamine.documents.Block.Column;
import etamine.documents.Documents;
import etamine.documents.Drawing;
import etamine.documents.Ink;
import etamine.documents.Paper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Sheets of every size and all kinds of blocks, read again from the files they were written to. */
class PapersOfEveryKindTest {
    private static final String HOSTILE = "<b onmouseover='x()'>\"&amp;\u0000\uFFFF";
    private final Documents documents = new PaperDocuments();

    @TempDir
    Path folder;

    /** ISO 216: A4 is 210 x 297 mm; ANSI letter is 8.5 x 11 in - published. 25.4 mm and 72 points are an inch. */
    @Test
    void layEverySizeOfSheetUprightAndAcross() throws IOException {
        assertThat(sheet(Paper.Sheet.of(Paper.Size.A4))).containsExactly(595, 842);
        assertThat(sheet(Paper.Sheet.of(Paper.Size.A4).across())).containsExactly(842, 595);
        assertThat(sheet(Paper.Sheet.of(Paper.Size.LETTER))).containsExactly(612, 792);
        assertThat(sheet(Paper.Sheet.of(Paper.Size.LETTER).across())).containsExactly(792, 612);
    }

    /** Large print begins at 16 points: UK Association for Accessible Formats, large print guidance - from memory. */
    @Test
    void setBodyTextInSixteenPointsForTheWall() throws IOException {
        Paper.Sheet wall = Paper.Sheet.of(Paper.Size.A4).in(Paper.Print.LARGE);
        assertThat(placed(paper(wall, new Block.Text("body"))).stream()
                        .filter(word -> word.text.equals("body"))
                        .map(word -> word.size))
                .singleElement()
                .satisfies(size -> assertThat(size).isEqualTo(16, within(0.01f)));
    }

    @Test
    void keepTogetherWhatOnePageCanHold() throws IOException {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Text("filler\n".repeat(50)));
        blocks.add(new Block.Together(List.of(new Block.Text("first\n" + "middle\n".repeat(8) + "last"))));
        List<Word> words = placed(paper(Paper.Sheet.of(Paper.Size.A4), blocks.toArray(Block[]::new)));
        assertThat(page(words, "first")).isEqualTo(page(words, "last")).isEqualTo(2);
    }

    @Test
    void setTwoColumnsSideBySideAndGoOnBelowTheLonger() throws IOException {
        Block beside =
                new Block.Beside(List.of(new Block.Text("west\nsouthwest")), List.of(new Block.Text("east")), 50);
        List<Word> words = placed(paper(Paper.Sheet.of(Paper.Size.A4), beside, new Block.Text("below")));
        assertThat(word(words, "east").y).isEqualTo(word(words, "west").y);
        assertThat(word(words, "east").x).isGreaterThan(word(words, "west").x + 200);
        assertThat(word(words, "below").y).isGreaterThan(word(words, "southwest").y);
        assertThat(word(words, "below").x).isEqualTo(word(words, "west").x);
    }

    @Test
    void putColumnsTooTallForAPageBelowOneAnother() throws IOException {
        Block tall =
                new Block.Beside(List.of(new Block.Text("left\n".repeat(150))), List.of(new Block.Text("right")), 50);
        List<Word> words = placed(paper(Paper.Sheet.of(Paper.Size.A4), tall));
        assertThat(words.stream().filter(word -> word.text.equals("left"))).hasSize(150);
        assertThat(page(words, "right")).isEqualTo(3);
    }

    @Test
    void beginAPageWhereToldButLeaveNoneEmpty() throws IOException {
        List<Word> words = placed(paper(
                Paper.Sheet.of(Paper.Size.A4),
                new Block.Text("one"),
                new Block.NewPage(),
                new Block.NewPage(),
                new Block.Text("two")));
        assertThat(page(words, "two")).isEqualTo(2);
        assertThat(words.stream().mapToInt(word -> word.page).max()).hasValue(2);
    }

    @Test
    void alignCellsLeftRightAndInTheMiddleOfTheirColumn() throws IOException {
        Block grid = new Block.Grid(
                List.of(new Column("", 1, false), new Column("", 1, true), new Column("", 1, Align.CENTRE, false)),
                List.of(List.of("aa", "bb", "cc"), List.of("aaaa", "bbbb", "cccc")),
                List.of());
        List<Word> words = placed(paper(Paper.Sheet.of(Paper.Size.A4), grid));
        assertThat(word(words, "aa").x).isEqualTo(word(words, "aaaa").x);
        assertThat(word(words, "bb").end()).isEqualTo(word(words, "bbbb").end(), within(0.1f));
        assertThat(word(words, "cc").middle()).isEqualTo(word(words, "cccc").middle(), within(0.1f));
    }

    @Test
    void turnHeadingsOfMarksUprightOnEveryPage() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 120; i++) {
            rows.add(List.of("plate " + i, "●"));
        }
        Block grid =
                new Block.Grid(List.of(new Column("Plate", 6, false), Column.marks("crustaceans", 1)), rows, List.of());
        Path file = folder.resolve("upright.pdf");
        documents.pdf(paper(Paper.Sheet.of(Paper.Size.A4), grid), file);
        StringBuilder turned = new StringBuilder();
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(4);
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    turned.append(text.getDir() == 90 ? text.getUnicode() : "");
                }
            }.getText(pdf);
        }
        assertThat(turned.toString()).isEqualTo("crustaceans".repeat(4));
    }

    @Test
    void drawShapesAsShapesAndShortenTextThatIsTooWide() throws IOException {
        Path file = folder.resolve("drawing.pdf");
        documents.pdf(paper(Paper.Sheet.of(Paper.Size.A4), drawing("a name that is far too long for its place")), file);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertThat(pdf.getPage(0).getResources().getXObjectNames()).isEmpty();
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("a name")
                    .contains("…")
                    .doesNotContain("place");
        }
        documents.printout(paper(Paper.Sheet.of(Paper.Size.A4), drawing("x"))).pages(72, (page, of, png) -> {
            var picture = ImageIO.read(new ByteArrayInputStream(png));
            assertThat(List.of(page, of, picture.getWidth())).containsExactly(1, 1, 595);
            assertThat(picture.getHeight()).isBetween(841, 842);
            // the box of 100 x 100 points begins under the title, so its middle is about here
            assertThat(picture.getRGB(100, 150) & 0xFFFFFF)
                    .isEqualTo(Ink.series(0).rgb());
            return true;
        });
    }

    @Test
    void makeADrawingLargerThanThePageSmaller() throws IOException {
        Drawing wide = new Drawing(
                "wide",
                5_000,
                20_000,
                List.of(
                        new Drawing.Label(0, 100, "begin", Drawing.Type.of(100)),
                        new Drawing.Label(
                                5_000, 20_000, "end", Drawing.Type.of(100).at(Align.RIGHT))));
        List<Word> words = placed(paper(Paper.Sheet.of(Paper.Size.A4), wide));
        assertThat(page(words, "begin")).isEqualTo(page(words, "end"));
        assertThat(word(words, "end").end()).isLessThan(545);
        assertThat(word(words, "end").y).isLessThan(842 - 36);
    }

    @Test
    void showCharactersThatNoFontHasAsBoxesAndSayWhatTheyAre() throws IOException {
        String plain = text(paper(Paper.Sheet.of(Paper.Size.A4), new Block.Text("crème")));
        assertThat(plain).doesNotContain("□").doesNotContain("Boxes stand");
        // U+1F9FF0 and the like are not assigned, so no font can have them
        String strange = text(paper(Paper.Sheet.of(Paper.Size.A4), new Block.Text("plane 14: \uDBFF\uDFFD end")));
        assertThat(strange).contains("plane 14: □ end").contains("Boxes stand for characters");
    }

    /** Unicode Standard Annex 9, the bidirectional algorithm: a number after Hebrew stands on its left - published. */
    @Test
    void readHebrewFromTheRight() throws IOException {
        List<Word> words = placed(paper(Paper.Sheet.of(Paper.Size.A4), new Block.Text("אב (גד) 12")));
        assertThat(words).isNotEmpty();
        assertThat(LineOrder.visual("אב (גד) 12")).isEqualTo("12 (דג) בא");
        assertThat(LineOrder.visual("salt, מלח, x")).isEqualTo("salt, חלמ, x");
    }

    @Test
    void writeWellFormedPagesWhateverTheNames() throws Exception {
        Path file = folder.resolve("page.html");
        documents.html(
                new Paper(
                        HOSTILE,
                        HOSTILE,
                        List.of(
                                new Block.Caution(HOSTILE),
                                new Block.Together(List.of(new Block.Heading(HOSTILE))),
                                new Block.Beside(List.of(new Block.Text(HOSTILE)), List.of(drawing(HOSTILE)), 40),
                                new Block.NewPage(),
                                new Block.Facts(List.of(new Block.Facts.Pair(HOSTILE, HOSTILE))),
                                new Block.Grid(
                                        List.of(Column.marks(HOSTILE, 1)),
                                        List.of(List.of(HOSTILE)),
                                        List.of(HOSTILE))),
                        HOSTILE,
                        Paper.Sheet.of(Paper.Size.LETTER).across().in(Paper.Print.LARGE)),
                file);
        String html = Files.readString(file);
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8))));
        assertThat(document.getElementsByTagName("b").getLength()).isEqualTo(1); // the caution's own sign
        assertThat(document.getElementsByTagName("h1").item(0).getTextContent())
                .isEqualTo("<b onmouseover='x()'>\"&amp;\uFFFD\uFFFD");
        assertThat(html).contains("@page{size:letter landscape").contains("font-size:16pt");
        assertThat(document.getElementsByTagName("svg").getLength()).isEqualTo(1);
        assertThat(document.getElementsByTagName("path").getLength()).isEqualTo(1);
    }

    @Test
    void stopDrawingPagesWhenToldSo() throws IOException {
        List<Integer> seen = new ArrayList<>();
        Paper three = paper(
                Paper.Sheet.of(Paper.Size.A4),
                new Block.Text("1"),
                new Block.NewPage(),
                new Block.Text("2"),
                new Block.NewPage(),
                new Block.Text("3"));
        documents.printout(three).pages(36, (page, of, png) -> {
            assertThat(of).isEqualTo(3);
            seen.add(page);
            return page < 2;
        });
        assertThat(seen).containsExactly(1, 2);
    }

    private static Drawing drawing(String label) {
        return new Drawing(
                "A picture of " + label,
                200,
                100,
                List.of(
                        new Drawing.Box(0, 0, 100, 100, Drawing.Paint.edged(Ink.series(0), Ink.BLACK)),
                        new Drawing.Line(0, 0, 200, 100, Drawing.Paint.outlined(Ink.GREY, 1)),
                        new Drawing.Dot(150, 50, 20, Drawing.Paint.filled(Ink.series(1))),
                        new Drawing.Outline(
                                List.of(
                                        new Drawing.Move(100, 0),
                                        new Drawing.Curve(150, 0, 150, 50, 200, 50),
                                        new Drawing.Straight(200, 60),
                                        new Drawing.Close()),
                                Drawing.Paint.filled(Ink.series(2))),
                        new Drawing.Label(4, 12, label, Drawing.Type.of(9).within(80))));
    }

    private static Paper paper(Paper.Sheet sheet, Block... blocks) {
        return new Paper("Title", "", List.of(blocks), "", sheet);
    }

    private List<Integer> sheet(Paper.Sheet sheet) throws IOException {
        Path file = folder.resolve("sheet.pdf");
        documents.pdf(paper(sheet, new Block.Text("x")), file);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            var box = pdf.getPage(0).getMediaBox();
            return List.of(Math.round(box.getWidth()), Math.round(box.getHeight()));
        }
    }

    private String text(Paper paper) throws IOException {
        Path file = folder.resolve("text.pdf");
        documents.pdf(paper, file);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(pdf);
        }
    }

    private record Word(String text, int page, float x, float y, float width, float size) {
        float end() {
            return x + width;
        }

        float middle() {
            return x + width / 2;
        }
    }

    private static Word word(List<Word> words, String text) {
        return words.stream().filter(word -> word.text.equals(text)).findFirst().orElseThrow();
    }

    private static int page(List<Word> words, String text) {
        return word(words, text).page;
    }

    /** The words of a paper and where each stands on its page. */
    private List<Word> placed(Paper paper) throws IOException {
        Path file = folder.resolve("placed.pdf");
        documents.pdf(paper, file);
        List<Word> words = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> at) {
                    TextPosition first = at.get(0);
                    TextPosition last = at.get(at.size() - 1);
                    float width = last.getXDirAdj() + last.getWidthDirAdj() - first.getXDirAdj();
                    words.add(new Word(
                            text.strip(),
                            getCurrentPageNo(),
                            first.getXDirAdj(),
                            first.getYDirAdj(),
                            width,
                            first.getFontSizeInPt()));
                }
            }.getText(pdf);
        }
        return words;
    }
}
