package etamine.documents.internal;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/** Rows as CSV by RFC 4180, with nothing in them that a spreadsheet would run. */
final class CsvFile {
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d[\\d.,]*");

    private CsvFile() {}

    static void write(Path part, List<String> headings, List<List<String>> rows) throws IOException {
        try (CsvWriter csv =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(part)) {
            csv.writeRecord(guarded(headings));
            rows.forEach(row -> csv.writeRecord(guarded(row)));
        }
    }

    private static List<String> guarded(List<String> cells) {
        return cells.stream().map(CsvFile::guarded).toList();
    }

    private static String guarded(String cell) {
        boolean formula = !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0;
        return formula && !NUMBER.matcher(cell).matches() ? "'" + cell : cell;
    }
}
