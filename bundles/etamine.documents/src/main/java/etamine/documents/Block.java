package etamine.documents;

import java.util.List;

/** Part of a {@link Paper}. */
public sealed interface Block {

    /** A smaller heading; stays with what follows it. */
    record Heading(String text) implements Block {}

    /** Running text, wrapped; line breaks in it are kept. */
    record Text(String text) implements Block {}

    /**
     * Labels with values, one pair a line.
     *
     * @param pairs the pairs
     */
    record Facts(List<Pair> pairs) implements Block {

        /** Copies the list. */
        public Facts {
            pairs = List.copyOf(pairs);
        }

        /** One label and its value. */
        public record Pair(String label, String value) {}
    }

    /**
     * Rows and columns; the headings are repeated on every page and long cells wrap.
     *
     * @param columns the columns
     * @param rows as many cells each as there are columns
     * @param totals a last row set apart; empty for none
     */
    record Grid(List<Column> columns, List<List<String>> rows, List<String> totals) implements Block {

        /** Copies the lists and checks that every row fits the columns. */
        public Grid {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            totals = List.copyOf(totals);
            int width = columns.size();
            if (rows.stream().anyMatch(row -> row.size() != width) || totals.size() % width != 0) {
                throw new IllegalArgumentException("Every row of a grid has " + width + " cells.");
            }
        }
    }

    /**
     * A column of a grid.
     *
     * @param heading its heading
     * @param weight its share of the width beside the others', more than 0
     * @param right whether its cells are set against the right edge, as figures are
     */
    record Column(String heading, int weight, boolean right) {}
}
