package etamine.inventory.internal;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import etamine.inventory.CountLine;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A count as a table: a heading row with {@code item}, {@code place}, {@code quantity} and, if wished, {@code useBy} and
 * {@code lot}; columns parted by semicolons, commas or tabs; UTF-8. Every fault is kept with the number of its line.
 *
 * @param lines what was counted
 * @param faults what is wrong, each starting with its line
 */
record CountFile(List<CountLine> lines, List<String> faults) {
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final List<String> NEEDED = List.of("item", "place", "quantity");

    /** Reads the bytes of a file; {@code knownItem} and {@code knownPlace} say which ids there are. */
    static CountFile read(byte[] bytes, Predicate<String> knownItem, Predicate<String> knownPlace) {
        CharBuffer text = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes), text, true);
        text.flip();
        if (result.isError()) {
            long line = text.chars().filter(c -> c == '\n').count() + 1;
            return new CountFile(
                    List.of(),
                    List.of("Line " + line + ": this is not UTF-8; save the file as CSV in UTF-8 and try again."));
        }
        return new Reading(knownItem, knownPlace).read(text.toString());
    }

    private static final class Reading {
        private final Predicate<String> knownItem;
        private final Predicate<String> knownPlace;
        private final List<CountLine> lines = new ArrayList<>();
        private final List<String> faults = new ArrayList<>();
        private List<String> columns = List.of();

        Reading(Predicate<String> knownItem, Predicate<String> knownPlace) {
            this.knownItem = knownItem;
            this.knownPlace = knownPlace;
        }

        CountFile read(String text) {
            String plain = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
            String first = plain.lines().findFirst().orElse("");
            try (CsvReader<CsvRecord> rows = CsvReader.builder()
                    .fieldSeparator(separator(first))
                    .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .ofCsvRecord(plain)) {
                rows.forEach(this::row);
            } catch (CsvParseException | IOException broken) {
                faults.add(
                        "Line " + (lines.size() + 1) + ": the table cannot be read; look for an open quotation mark.");
            }
            if (columns.isEmpty() && faults.isEmpty()) {
                faults.add("Line 1: the file is empty; it starts with a heading row such as item;place;quantity.");
            }
            return new CountFile(List.copyOf(lines), List.copyOf(faults));
        }

        private static char separator(String heading) {
            return heading.contains(";") ? ';' : heading.contains("\t") ? '\t' : ',';
        }

        private void row(CsvRecord row) {
            long at = row.getStartingLineNumber();
            if (columns.isEmpty()) {
                columns = row.getFields().stream()
                        .map(name -> name.strip().toLowerCase(Locale.ROOT))
                        .toList();
                if (!columns.containsAll(NEEDED)) {
                    faults.add("Line " + at + ": the heading row must name item, place and quantity.");
                }
            } else if (columns.containsAll(NEEDED)) {
                line(row, at);
            }
        }

        private void line(CsvRecord row, long at) {
            String item = cell(row, "item");
            String place = cell(row, "place");
            int before = faults.size();
            if (!knownItem.test(item)) {
                faults.add("Line " + at + ": there is no item “" + item + "”; write its id as in the ingredients.");
            }
            if (!knownPlace.test(place)) {
                faults.add("Line " + at + ": there is no place “" + place + "”; write its id as in the places.");
            }
            if (row.getFieldCount() > columns.size()) {
                faults.add("Line " + at + ": there are more columns than headings; put a text with a "
                        + "comma or semicolon in quotation marks.");
            }
            Optional<Quantity> quantity = quantity(cell(row, "quantity"), at);
            Optional<LocalDate> useBy = day(cell(row, "useby"), at);
            if (faults.size() == before) {
                lines.add(new CountLine(item, place, quantity.orElseThrow(), useBy, cell(row, "lot")));
            }
        }

        private String cell(CsvRecord row, String column) {
            int index = columns.indexOf(column);
            return index < 0 || index >= row.getFieldCount()
                    ? ""
                    : row.getField(index).strip();
        }

        private Optional<Quantity> quantity(String text, long at) {
            try {
                return Optional.of(QuantityText.parse(text));
            } catch (MeasureException unreadable) {
                faults.add("Line " + at + ": " + unreadable.getMessage());
                return Optional.empty();
            }
        }

        private Optional<LocalDate> day(String text, long at) {
            try {
                return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
            } catch (DateTimeException unreadable) {
                faults.add("Line " + at + ": “" + text + "” is not a day; write one such as 2026-12-01.");
                return Optional.empty();
            }
        }
    }
}
