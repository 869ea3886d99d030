package etamine.documents.internal;

import etamine.documents.Workbook;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.dhatim.fastexcel.Worksheet;

/** A workbook as Office Open XML. */
final class XlsxFile {
    private static final int LONGEST_NAME = 31;
    private static final int LONGEST_TEXT = 32_767;
    private static final int WIDEST = 60;

    private XlsxFile() {}

    static void write(Workbook workbook, Path part) throws IOException {
        try (OutputStream out = Files.newOutputStream(part);
                org.dhatim.fastexcel.Workbook book = new org.dhatim.fastexcel.Workbook(out, "Etamine", "1.0")) {
            List<String> names = names(workbook.sheets());
            for (int i = 0; i < names.size(); i++) {
                sheet(book.newWorksheet(names.get(i)), workbook.sheets().get(i));
            }
        }
    }

    private static void sheet(Worksheet to, Workbook.Sheet sheet) throws IOException {
        int columns = sheet.headings().size();
        for (int column = 0; column < columns; column++) {
            to.value(0, column, text(sheet.headings().get(column)));
            to.width(column, width(sheet, column));
        }
        if (columns > 0) {
            to.range(0, 0, 0, columns - 1).style().bold().set();
        }
        to.freezePane(0, 1);
        to.repeatRows(0);
        for (int row = 0; row < sheet.rows().size(); row++) {
            for (int column = 0; column < columns; column++) {
                cell(to, row + 1, column, sheet.rows().get(row).get(column));
            }
        }
        to.finish();
    }

    private static void cell(Worksheet to, int row, int column, Workbook.Cell cell) {
        if (cell instanceof Workbook.Figure figure) {
            to.value(row, column, figure.value());
            to.style(row, column).format(format(figure.decimals())).set();
        } else if (cell instanceof Workbook.Day day) {
            to.value(row, column, day.day());
            to.style(row, column).format("yyyy-mm-dd").set();
        } else if (cell instanceof Workbook.Words words && !words.text().isEmpty()) {
            to.value(row, column, text(words.text()));
        }
    }

    private static String format(int decimals) {
        int shown = Math.max(0, Math.min(decimals, 12));
        return shown == 0 ? "0" : "0." + "0".repeat(shown);
    }

    /** What a cell can hold: no more than so many characters and none that XML forbids. */
    private static String text(String text) {
        StringBuilder allowed = new StringBuilder();
        text.codePoints()
                .map(c -> HtmlText.allowed(c) ? c : 0xFFFD)
                .limit(LONGEST_TEXT / 2)
                .forEach(allowed::appendCodePoint);
        return allowed.toString();
    }

    /** As wide as its longest text, within reason. */
    private static double width(Workbook.Sheet sheet, int column) {
        int longest = sheet.headings().get(column).length();
        for (List<Workbook.Cell> row : sheet.rows()) {
            longest = Math.max(longest, length(row.get(column)));
        }
        return Math.min(longest, WIDEST) + 2;
    }

    private static int length(Workbook.Cell cell) {
        if (cell instanceof Workbook.Words words) {
            return words.text().length();
        }
        return cell instanceof Workbook.Figure figure
                ? figure.value().toBigInteger().toString().length() + figure.decimals() + 1
                : 10;
    }

    /** Names that a spreadsheet takes: short, without the characters of references, different in any case. */
    private static List<String> names(List<Workbook.Sheet> sheets) {
        List<String> names = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Workbook.Sheet sheet : sheets) {
            String wanted = text(sheet.name())
                    .replaceAll("[\\\\/?*\\[\\]:\\p{Cntrl}]", "-")
                    .replaceAll("^'+|'+$", "")
                    .strip();
            String name = cut(wanted.isEmpty() ? "Sheet" : wanted, LONGEST_NAME);
            for (int n = 2; !taken.add(name.toLowerCase(Locale.ROOT)); n++) {
                String number = " " + n;
                name = cut(name, LONGEST_NAME - number.length()) + number;
            }
            names.add(name);
        }
        return names;
    }

    private static String cut(String name, int length) {
        return name.length() <= length ? name : name.substring(0, length);
    }
}
