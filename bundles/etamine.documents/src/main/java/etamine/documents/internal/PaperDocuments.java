package etamine.documents.internal;

import etamine.base.Printout;
import etamine.documents.Block;
import etamine.documents.Documents;
import etamine.documents.Paper;
import etamine.documents.Workbook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.osgi.service.component.annotations.Component;

/** Writes each form beside its place and moves it there when it is whole. */
@Component
public final class PaperDocuments implements Documents {
    private final InstalledFonts fonts = new InstalledFonts();

    @Override
    public void pdf(Paper paper, Path file) throws IOException {
        WholeFile.write(file, part -> {
            try (PDDocument document = new PDDocument()) {
                new PdfLayout(paper, fonts).on(document);
                document.save(part.toFile());
            }
        });
    }

    @Override
    public void html(Paper paper, Path file) throws IOException {
        WholeFile.write(file, part -> Files.writeString(part, HtmlPage.of(paper), StandardCharsets.UTF_8));
    }

    @Override
    public void csv(Block.Grid grid, Path file) throws IOException {
        List<String> headings =
                grid.columns().stream().map(Block.Column::heading).toList();
        WholeFile.write(file, part -> CsvFile.write(part, headings, grid.rows()));
    }

    @Override
    public void csv(Workbook.Sheet sheet, Path file) throws IOException {
        List<List<String>> rows = sheet.rows().stream()
                .map(row -> row.stream().map(PaperDocuments::plain).toList())
                .toList();
        WholeFile.write(file, part -> CsvFile.write(part, sheet.headings(), rows));
    }

    @Override
    public void xlsx(Workbook workbook, Path file) throws IOException {
        WholeFile.write(file, part -> XlsxFile.write(workbook, part));
    }

    @Override
    public Printout printout(Paper paper) {
        return new PaperPrintout(paper, this, fonts);
    }

    private static String plain(Workbook.Cell cell) {
        if (cell instanceof Workbook.Figure figure) {
            return figure.value().toPlainString();
        }
        return cell instanceof Workbook.Day day ? day.day().toString() : ((Workbook.Words) cell).text();
    }
}
