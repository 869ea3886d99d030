package etamine.costing.internal.paper;

import etamine.documents.Block.Column;
import etamine.documents.Block.Grid;
import etamine.documents.Workbook;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One table, for a page and for a spreadsheet. On the page money has the places of its coins; in a spreadsheet it has four.
 *
 * @param columns the columns
 * @param rows what stands in the rows
 * @param <T> what a row is made from
 */
record CostTable<T>(List<Heading<T>> columns, List<T> rows) {
    private static final int SHEET_PLACES = 4;

    /**
     * A column.
     *
     * @param name its heading
     * @param weight its share of the width
     * @param value what stands in a row: text, a number, money, or an optional of one of them
     */
    record Heading<T>(String name, int weight, Function<T, Object> value) {}

    /** A table without columns yet. */
    static <T> CostTable<T> of(List<T> rows) {
        return new CostTable<>(List.of(), rows);
    }

    /** The same table with one more column. */
    CostTable<T> with(String name, int weight, Function<T, Object> value) {
        List<Heading<T>> more = new ArrayList<>(columns);
        more.add(new Heading<>(name, weight, value));
        return new CostTable<>(more, rows);
    }

    Grid grid(String... totals) {
        List<Column> headings = columns.stream()
                .map(column -> new Column(column.name(), column.weight(), isFigure(column)))
                .toList();
        List<List<String>> cells = rows.stream()
                .map(row -> columns.stream()
                        .map(column -> text(column.value().apply(row)))
                        .toList())
                .toList();
        return new Grid(headings, cells, List.of(totals));
    }

    private boolean isFigure(Heading<T> column) {
        return rows.stream()
                .map(column.value())
                .map(CostTable::plain)
                .filter(value -> !value.equals(""))
                .findFirst()
                .filter(value -> !(value instanceof String))
                .isPresent();
    }

    private static Object plain(Object value) {
        return value instanceof Optional<?> optional
                ? optional.map(found -> (Object) found).orElse("")
                : value;
    }

    private static String text(Object value) {
        Object plain = plain(value);
        if (plain instanceof Money money) {
            return money.rounded().toString();
        }
        return plain instanceof BigDecimal number ? number.toPlainString() : plain.toString();
    }

    Workbook.Sheet sheet(String name) {
        return new Workbook.Sheet(
                name,
                columns.stream().map(Heading::name).toList(),
                rows.stream()
                        .map(row -> columns.stream()
                                .map(column -> cell(plain(column.value().apply(row))))
                                .toList())
                        .toList());
    }

    private static Workbook.Cell cell(Object value) {
        if (value instanceof Money money) {
            return Workbook.Cell.of(money.amount().setScale(SHEET_PLACES, RoundingMode.HALF_UP), SHEET_PLACES);
        }
        if (value instanceof BigDecimal number) {
            return Workbook.Cell.of(number);
        }
        return value instanceof Long whole ? Workbook.Cell.of(whole) : Workbook.Cell.of(value.toString());
    }
}
