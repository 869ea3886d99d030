package etamine.documents;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/**
 * Tables for a spreadsheet program.
 *
 * @param sheets the tables, at least one
 */
public record Workbook(List<Sheet> sheets) {

    /** Copies the list and checks that there is a sheet. */
    public Workbook {
        sheets = List.copyOf(sheets);
        if (sheets.isEmpty()) {
            throw new IllegalArgumentException("A workbook has at least one sheet.");
        }
    }

    /** A workbook of one sheet. */
    public static Workbook of(Sheet sheet) {
        return new Workbook(List.of(sheet));
    }

    /**
     * One table. Its headings stay in sight when the table is scrolled and are repeated on every printed page.
     *
     * @param name its name; what a spreadsheet forbids in names is replaced, and names made different
     * @param headings the headings
     * @param rows as many cells each as there are headings
     */
    public record Sheet(String name, List<String> headings, List<List<Cell>> rows) {

        /** Copies the lists and checks that every row fits the headings. */
        public Sheet {
            headings = List.copyOf(headings);
            rows = rows.stream().map(List::copyOf).toList();
            int width = headings.size();
            if (rows.stream().anyMatch(row -> row.size() != width)) {
                throw new IllegalArgumentException("Every row of this sheet has " + width + " cells.");
            }
        }
    }

    /** What stands in one place of a table. */
    public sealed interface Cell {

        /** Text, as it is: never taken for a formula. */
        static Cell of(String text) {
            return new Words(text);
        }

        /** A number shown with that many decimals. */
        static Cell of(BigDecimal value, int decimals) {
            return new Figure(value, decimals);
        }

        /** A number shown with its own decimals. */
        static Cell of(BigDecimal value) {
            return new Figure(value, Math.max(0, value.scale()));
        }

        /** A whole number. */
        static Cell of(long value) {
            return new Figure(BigDecimal.valueOf(value), 0);
        }

        /** A day. */
        static Cell of(LocalDate day) {
            return new Day(day);
        }

        /** Nothing: not the same as 0. */
        static Cell empty() {
            return new Words("");
        }
    }

    /** Text. */
    public record Words(String text) implements Cell {}

    /**
     * A number, kept to the fifteen digits a spreadsheet keeps.
     *
     * @param value the number
     * @param decimals how many decimals are shown, from 0 to 12
     */
    public record Figure(BigDecimal value, int decimals) implements Cell {}

    /** A day. */
    public record Day(LocalDate day) implements Cell {}
}
