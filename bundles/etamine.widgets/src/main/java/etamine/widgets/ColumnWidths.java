package etamine.widgets;

import java.util.List;
import java.util.function.BiFunction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/**
 * Gives every column the room its figures and words need and shares what is left by weight, until somebody drags one.
 * When there is not enough, columns of words give way first, and then the table scrolls sideways: a figure that is cut off
 * is worse than one that has to be scrolled to.
 */
final class ColumnWidths {
    private static final int SAMPLE = 400;
    private static final int PADDING = 22;
    private static final int LEAST_WORDS = 90;

    private final Table table;
    private final List<? extends Column<?>> columns;
    private final BiFunction<Integer, Integer, String> text;
    private int[] given = {};
    private int room;
    private int letter;
    private boolean dragged;

    private ColumnWidths(Table table, List<? extends Column<?>> columns, BiFunction<Integer, Integer, String> text) {
        this.table = table;
        this.columns = columns;
        this.text = text;
    }

    /**
     * Follows the table's size.
     *
     * @param text what stands in a row and a column
     */
    static ColumnWidths follow(
            Table table, List<? extends Column<?>> columns, BiFunction<Integer, Integer, String> text) {
        ColumnWidths widths = new ColumnWidths(table, columns, text);
        table.addListener(SWT.Resize, event -> widths.share());
        for (TableColumn column : table.getColumns()) {
            column.addListener(SWT.Resize, event -> widths.notice());
        }
        return widths;
    }

    /** Shares the width anew; called whenever the table or its rows have changed. */
    void share() {
        int client = table.getClientArea().width;
        if (client <= 0 || dragged || table.getColumnCount() == 0) {
            return;
        }
        room = client;
        given = shared(client, natural());
        int[] widths = given;
        given = new int[0];
        for (int at = 0; at < widths.length; at++) {
            table.getColumn(at).setWidth(widths[at]);
        }
        given = widths;
    }

    /** Somebody drags when a column changes though neither the table nor this has changed it; the last one is filled up. */
    private void notice() {
        for (int at = 0; at + 1 < given.length && table.getClientArea().width == room; at++) {
            dragged |= Math.abs(table.getColumn(at).getWidth() - given[at]) > 2;
        }
    }

    private int[] natural() {
        int[] natural = new int[columns.size()];
        int rows = Math.min(table.getItemCount(), SAMPLE);
        GC gc = new GC(table);
        try {
            letter = gc.textExtent("n").x;
            for (int at = 0; at < natural.length; at++) {
                natural[at] = gc.textExtent(columns.get(at).heading()).x + PADDING;
                String widest = "";
                for (int row = 0; row < rows; row++) {
                    String cell = text.apply(row, at);
                    widest = cell.length() > widest.length() ? cell : widest;
                }
                natural[at] = Math.max(natural[at], gc.textExtent(widest).x + PADDING);
            }
        } finally {
            gc.dispose();
        }
        return natural;
    }

    private int[] shared(int client, int[] natural) {
        int[] widths = natural.clone();
        int wanted = 0;
        for (int width : widths) {
            wanted += width;
        }
        int total = columns.stream().mapToInt(Column::weight).sum();
        if (wanted <= client) {
            for (int at = 0; at < widths.length; at++) {
                widths[at] += (client - wanted) * columns.get(at).weight() / Math.max(1, total);
            }
        } else {
            giveWay(widths, wanted - client);
        }
        return widths;
    }

    /** Takes what is missing from the columns of words, the widest first, but leaves each room for a word. */
    private void giveWay(int[] widths, int missing) {
        for (int left = missing; left > 0; ) {
            int widest = -1;
            for (int at = 0; at < widths.length; at++) {
                boolean gives = !columns.get(at).figures() && widths[at] > least(at);
                if (gives && (widest < 0 || widths[at] > widths[widest])) {
                    widest = at;
                }
            }
            if (widest < 0) {
                return;
            }
            int step = Math.min(left, Math.min(8, widths[widest] - least(widest)));
            widths[widest] -= step;
            left -= step;
        }
    }

    private int least(int at) {
        return Math.max(LEAST_WORDS, columns.get(at).letters() * letter);
    }
}
