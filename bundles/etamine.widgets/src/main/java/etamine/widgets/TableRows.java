package etamine.widgets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The rows behind a {@link ListTable}, filtered and sorted, without a widget. */
final class TableRows<T> {
    private final Function<T, String> key;
    private final List<Column<T>> columns;
    private List<T> all = List.of();
    private List<T> shown = List.of();
    private Map<String, Integer> index = Map.of();
    private Optional<Comparator<T>> order = Optional.empty();
    private String filter = "";

    TableRows(Function<T, String> key, List<Column<T>> columns) {
        this.key = key;
        this.columns = List.copyOf(columns);
    }

    void set(List<T> rows) {
        all = List.copyOf(rows);
        arrange();
    }

    void sort(Comparator<T> newOrder) {
        order = Optional.of(newOrder);
        arrange();
    }

    void filter(String text) {
        filter = text.strip().toLowerCase(Locale.ROOT);
        arrange();
    }

    List<Column<T>> columns() {
        return columns;
    }

    List<T> shown() {
        return shown;
    }

    boolean hasNone() {
        return all.isEmpty();
    }

    String key(T row) {
        return key.apply(row);
    }

    int indexOf(String wanted) {
        return index.getOrDefault(wanted, -1);
    }

    boolean holds(String wanted) {
        return all.stream().anyMatch(row -> key.apply(row).equals(wanted));
    }

    int[] indicesOf(Set<String> keys) {
        return keys.stream()
                .mapToInt(this::indexOf)
                .filter(at -> at >= 0)
                .sorted()
                .toArray();
    }

    /** Rows as lines of cells with tabs between, below a line of headings. */
    String asText(List<T> rows) {
        StringBuilder text =
                new StringBuilder(columns.stream().map(Column::heading).collect(Collectors.joining("\t")));
        for (T row : rows) {
            text.append('\n')
                    .append(columns.stream()
                            .map(column -> column.text().apply(row).replace('\t', ' '))
                            .collect(Collectors.joining("\t")));
        }
        return text.toString();
    }

    private void arrange() {
        List<T> rows = new ArrayList<>();
        for (T row : all) {
            if (filter.isEmpty() || matches(row)) {
                rows.add(row);
            }
        }
        order.ifPresent(rows::sort);
        shown = List.copyOf(rows);
        Map<String, Integer> places = new HashMap<>();
        for (int at = 0; at < rows.size(); at++) {
            places.put(key.apply(rows.get(at)), at);
        }
        index = places;
    }

    private boolean matches(T row) {
        StringBuilder cells = new StringBuilder();
        columns.forEach(column -> cells.append(column.text().apply(row)).append('\n'));
        String text = cells.toString().toLowerCase(Locale.ROOT);
        for (String word : filter.split("\\s+")) {
            if (!text.contains(word)) {
                return false;
            }
        }
        return true;
    }
}
