package etamine.documents;

import java.util.List;

/** Part of a {@link Paper}. */
public sealed interface Block
        permits Block.Heading,
                Block.Text,
                Block.Caution,
                Block.Facts,
                Block.Grid,
                Block.Together,
                Block.Beside,
                Block.NewPage,
                Block.Photo,
                Drawing {

    /** A smaller heading; stays with what follows it. */
    record Heading(String text) implements Block {}

    /** Running text, wrapped; line breaks in it are kept. */
    record Text(String text) implements Block {}

    /** What must not be overlooked: text in a box with a sign before it. */
    record Caution(String text) implements Block {}

    /** What follows begins on a page of its own; nothing happens at the top of a page. */
    record NewPage() implements Block {}

    /**
     * A picture as wide as its column, but never so tall that it pushes the rest away.
     *
     * @param picture the picture
     * @param text what is seen on it, for those who do not see it
     * @param tallest the most it is tall on paper, in points of 1/72 inch, more than 0
     */
    record Photo(Picture picture, String text, int tallest) implements Block {

        /** Checks the height. */
        public Photo {
            if (tallest <= 0) {
                throw new IllegalArgumentException("A picture on paper is more than 0 points tall.");
            }
        }
    }

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
     * Blocks that stay on one page when one page can hold them.
     *
     * @param blocks the blocks, top to bottom
     */
    record Together(List<Block> blocks) implements Block {

        /** Copies the list. */
        public Together {
            blocks = List.copyOf(blocks);
        }
    }

    /**
     * Two columns side by side; where one page cannot hold them they stand one below the other.
     *
     * @param left the left column
     * @param right the right column
     * @param leftPercent the left column's share of the width, from 10 to 90
     */
    record Beside(List<Block> left, List<Block> right, int leftPercent) implements Block {

        /** Copies the lists and checks the share. */
        public Beside {
            left = List.copyOf(left);
            right = List.copyOf(right);
            if (leftPercent < 10 || leftPercent > 90) {
                throw new IllegalArgumentException("A column takes from 10 to 90 percent of the width.");
            }
        }
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
     * @param align where its cells' text stands
     * @param upright whether the heading is turned to read upwards, for narrow columns
     */
    record Column(String heading, int weight, Align align, boolean upright) {

        /** Checks the weight. */
        public Column {
            if (weight <= 0) {
                throw new IllegalArgumentException("A column has a weight of more than 0.");
            }
        }

        /** A column with a level heading. */
        public Column(String heading, int weight, boolean right) {
            this(heading, weight, right ? Align.RIGHT : Align.LEFT, false);
        }

        /** A narrow column of marks under a heading that reads upwards. */
        public static Column marks(String heading, int weight) {
            return new Column(heading, weight, Align.CENTRE, true);
        }

        /** Whether its cells are set against the right edge. */
        public boolean right() {
            return align == Align.RIGHT;
        }
    }
}
