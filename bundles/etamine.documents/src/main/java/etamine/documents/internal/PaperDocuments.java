package etamine.documents.internal;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import etamine.documents.Block;
import etamine.documents.Documents;
import etamine.documents.Paper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.osgi.service.component.annotations.Component;

/** Writes each form beside its place and moves it there when it is whole. */
@Component
public final class PaperDocuments implements Documents {
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d[\\d.,]*");

    @Override
    public void pdf(Paper paper, Path file) throws IOException {
        WholeFile.write(file, part -> new PdfLayout(paper).save(part));
    }

    @Override
    public void html(Paper paper, Path file) throws IOException {
        WholeFile.write(file, part -> Files.writeString(part, HtmlPage.of(paper), StandardCharsets.UTF_8));
    }

    @Override
    public void csv(Block.Grid grid, Path file) throws IOException {
        WholeFile.write(file, part -> {
            try (CsvWriter csv =
                    CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(part)) {
                csv.writeRecord(grid.columns().stream()
                        .map(Block.Column::heading)
                        .map(PaperDocuments::guarded)
                        .toList());
                grid.rows()
                        .forEach(row -> csv.writeRecord(
                                row.stream().map(PaperDocuments::guarded).toList()));
            }
        });
    }

    private static String guarded(String cell) {
        boolean formula = !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0;
        return formula && !NUMBER.matcher(cell).matches() ? "'" + cell : cell;
    }
}
