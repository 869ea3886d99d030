package etamine.documents.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.documents.Documents;
import etamine.documents.Workbook;
import etamine.documents.Workbook.Cell;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Workbooks read again as what they are by ECMA-376: a ZIP archive of XML. */
class XlsxFileTest {
    private static final String SHEET = "xl/worksheets/sheet1.xml";
    private final Documents documents = new PaperDocuments();

    @TempDir
    Path folder;

    @Test
    void keepsNumbersAsNumbersWithAllTheirDigits() throws Exception {
        Document sheet = written(
                List.of("Plate", "Cost"),
                List.of(
                        List.of(Cell.of("Fowl"), Cell.of(new BigDecimal("6.1250"), 2)),
                        List.of(Cell.of("Tart"), Cell.of(new BigDecimal("-0.000000012345678901")))),
                SHEET);
        assertThat(cell(sheet, "B2").getAttribute("t")).isIn("", "n");
        assertThat(new BigDecimal(value(sheet, "B2"))).isEqualByComparingTo("6.125");
        assertThat(new BigDecimal(value(sheet, "B3"))).isEqualByComparingTo("-0.000000012345678901");
    }

    /** Day 1 of the calendar is 1 January 1900 and 1900 has a 29 February in it: ECMA-376-1, 18.17.4.1 - from memory. */
    @Test
    void keepsDaysAsDays() throws Exception {
        Document sheet = written(List.of("Day"), List.of(List.of(Cell.of(LocalDate.of(2026, 11, 24)))), SHEET);
        assertThat(new BigDecimal(value(sheet, "A2"))).isEqualByComparingTo("46350");
    }

    @Test
    void holdsTheHeadingsInSightAndRepeatsThemOnPaper() throws Exception {
        Document sheet = written(List.of("Plate"), List.of(List.of(Cell.of("x"))), SHEET);
        Element pane = (Element) sheet.getElementsByTagName("pane").item(0);
        assertThat(pane.getAttribute("ySplit")).isEqualTo("1");
        assertThat(pane.getAttribute("state")).isEqualTo("frozen");
        assertThat(entry("xl/workbook.xml")).contains("Print_Titles").contains("$1:$1");
    }

    @Test
    void neverTakesTextForAFormula() throws Exception {
        Document sheet = written(
                List.of("=1+1"),
                List.of(
                        List.of(Cell.of("=HYPERLINK(\"http://x.example\")")),
                        List.of(Cell.of("+1")),
                        List.of(Cell.of("<c/>&\u0000"))),
                SHEET);
        assertThat(sheet.getElementsByTagName("f").getLength()).isZero();
        for (String place : List.of("A1", "A2", "A3", "A4")) {
            assertThat(cell(sheet, place).getAttribute("t")).as(place).isIn("s", "inlineStr");
        }
        assertThat(entry("xl/sharedStrings.xml"))
                .contains("=HYPERLINK(&quot;http://x.example&quot;)")
                .contains("&lt;c/&gt;&amp;");
    }

    @Test
    void leavesEmptyWhatIsNotKnown() throws Exception {
        Document sheet = written(List.of("A", "B"), List.of(List.of(Cell.empty(), Cell.of(0))), SHEET);
        assertThat(value(sheet, "B2")).isEqualTo("0");
        assertThat(has(sheet, "A2")).isFalse();
    }

    @Test
    void givesSheetsNamesThatASpreadsheetTakes() throws Exception {
        List<Workbook.Sheet> sheets = new ArrayList<>();
        for (String name : List.of("a/b:c", "A-B-C", "", "x".repeat(40), "X".repeat(40), "'quoted'")) {
            sheets.add(new Workbook.Sheet(name, List.of("h"), List.of()));
        }
        documents.xlsx(new Workbook(sheets), file());
        String book = entry("xl/workbook.xml");
        assertThat(book)
                .contains("\"a-b-c\"")
                .contains("\"A-B-C 2\"")
                .contains("\"Sheet\"")
                .contains("\"" + "x".repeat(31) + "\"")
                .contains("\"" + "X".repeat(29) + " 2\"")
                .contains("\"quoted\"");
    }

    @Test
    void survivesTextLongerThanACellHolds() throws Exception {
        Document sheet = written(List.of("A"), List.of(List.of(Cell.of("é".repeat(100_000)))), SHEET);
        assertThat(has(sheet, "A2")).isTrue();
    }

    @Test
    void writesTheSameSheetAsCsv() throws IOException {
        Path csv = folder.resolve("sheet.csv");
        documents.csv(
                new Workbook.Sheet(
                        "Prices",
                        List.of("Plate", "Price", "From"),
                        List.of(List.of(
                                Cell.of("=cmd()"),
                                Cell.of(new BigDecimal("-24.50"), 2),
                                Cell.of(LocalDate.of(2026, 11, 1))))),
                csv);
        assertThat(Files.readString(csv, StandardCharsets.UTF_8))
                .isEqualTo("Plate,Price,From\r\n'=cmd(),-24.50,2026-11-01\r\n");
    }

    private Path file() {
        return folder.resolve("book.xlsx");
    }

    private Document written(List<String> headings, List<List<Cell>> rows, String entry) throws Exception {
        documents.xlsx(Workbook.of(new Workbook.Sheet("Sheet", headings, rows)), file());
        try (ZipFile zip = new ZipFile(file().toFile());
                InputStream in = zip.getInputStream(zip.getEntry(entry))) {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
        }
    }

    private String entry(String name) throws IOException {
        try (ZipFile zip = new ZipFile(file().toFile());
                InputStream in = zip.getInputStream(zip.getEntry(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String value(Document sheet, String place) {
        return cell(sheet, place).getElementsByTagName("v").item(0).getTextContent();
    }

    private static Element cell(Document sheet, String place) {
        return find(sheet, place).orElseThrow(() -> new AssertionError("no cell " + place));
    }

    private static boolean has(Document sheet, String place) {
        return find(sheet, place)
                .filter(cell -> cell.getChildNodes().getLength() > 0)
                .isPresent();
    }

    private static Optional<Element> find(Document sheet, String place) {
        NodeList cells = sheet.getElementsByTagName("c");
        for (int i = 0; i < cells.getLength(); i++) {
            Element cell = (Element) cells.item(i);
            if (cell.getAttribute("r").equals(place)) {
                return Optional.of(cell);
            }
        }
        return Optional.empty();
    }
}
