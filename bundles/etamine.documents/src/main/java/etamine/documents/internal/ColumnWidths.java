package etamine.documents.internal;

import etamine.documents.Block;
import java.io.IOException;
import java.util.List;

/** How wide the columns of a grid are: by their weights, but wide enough for their longest word where that is possible. */
final class ColumnWidths {
    private static final int ROWS = 500;
    private static final float MOST = 0.4f;

    private final Canvas canvas;
    private final Type body;
    private final float gap;

    ColumnWidths(Canvas canvas, Type.Sizes sizes) {
        this.canvas = canvas;
        this.body = sizes.body();
        this.gap = sizes.gap(8);
    }

    float[] of(Block.Grid grid) throws IOException {
        float[] widths = weighed(grid.columns());
        float[] needed = needed(grid);
        float missing = 0;
        float spare = 0;
        for (int i = 0; i < widths.length; i++) {
            missing += Math.max(0, needed[i] - widths[i]);
            spare += Math.max(0, widths[i] - needed[i]);
        }
        if (missing == 0 || missing > spare) {
            return widths;
        }
        for (int i = 0; i < widths.length; i++) {
            widths[i] = widths[i] < needed[i] ? needed[i] : widths[i] - (widths[i] - needed[i]) * missing / spare;
        }
        return widths;
    }

    private float[] weighed(List<Block.Column> columns) {
        float total = columns.stream().mapToInt(Block.Column::weight).sum();
        float[] widths = new float[columns.size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = canvas.width() * columns.get(i).weight() / total;
        }
        return widths;
    }

    private float[] needed(Block.Grid grid) throws IOException {
        float[] needed = new float[grid.columns().size()];
        float most = canvas.width() * MOST;
        for (int i = 0; i < needed.length; i++) {
            Block.Column column = grid.columns().get(i);
            needed[i] = column.upright() ? body.line() : longestWord(column.heading());
            for (List<String> row :
                    grid.rows().subList(0, Math.min(ROWS, grid.rows().size()))) {
                needed[i] = Math.max(needed[i], longestWord(row.get(i)));
            }
            needed[i] = Math.min(needed[i] + gap + 1, most);
        }
        return needed;
    }

    private float longestWord(String text) throws IOException {
        float longest = 0;
        String start = text.substring(0, Math.min(text.length(), 1_000));
        for (String word : start.split("[ \n]")) {
            longest = Math.max(longest, canvas.text().width(word, body.size()));
        }
        return longest;
    }
}
