package etamine.widgets;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Table;

/** Shares a table's width among its columns by weight until somebody drags one. */
final class ColumnWidths {
    private static final int LEAST = 48;
    private final Table table;
    private final List<Integer> weights;
    private boolean sizing;
    private boolean dragged;
    private int width;

    private ColumnWidths(Table table, List<Integer> weights) {
        this.table = table;
        this.weights = weights;
    }

    static void follow(Table table, List<Integer> weights) {
        ColumnWidths widths = new ColumnWidths(table, weights);
        table.addListener(SWT.Resize, event -> widths.share());
        for (int at = 0; at < weights.size(); at++) {
            table.getColumn(at).addListener(SWT.Resize, event -> widths.dragged |= !widths.sizing && widths.width > 0);
        }
    }

    private void share() {
        int client = table.getClientArea().width;
        if (client <= 0 || client == width || dragged) {
            return;
        }
        width = client;
        sizing = true;
        int total = weights.stream().mapToInt(Integer::intValue).sum();
        for (int at = 0; at < weights.size(); at++) {
            table.getColumn(at).setWidth(Math.max(LEAST, client * weights.get(at) / Math.max(1, total)));
        }
        table.getDisplay().asyncExec(() -> sizing = false);
    }
}
