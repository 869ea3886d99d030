package etamine.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Shows the whole text of a table cell that is too narrow for it, as a tooltip. */
final class CutOffTips {
    private static final int MARGIN = 12;

    private CutOffTips() {}

    static void show(Table table) {
        table.addListener(SWT.MouseMove, event -> tip(table, event));
    }

    private static void tip(Table table, Event event) {
        TableItem item = table.getItem(new Point(event.x, event.y));
        String wanted = item == null ? null : cutOff(table, item, event);
        String shown = table.getToolTipText();
        if (wanted == null ? shown != null : !wanted.equals(shown)) {
            table.setToolTipText(wanted);
        }
    }

    private static @org.jspecify.annotations.Nullable String cutOff(Table table, TableItem item, Event event) {
        for (int at = 0; at < table.getColumnCount(); at++) {
            if (item.getBounds(at).contains(event.x, event.y)) {
                int icon = item.getImage(at) == null ? 0 : item.getImage(at).getBounds().width + MARGIN / 2;
                boolean fits = width(table, item.getText(at)) + icon + MARGIN
                        <= table.getColumn(at).getWidth();
                return fits ? null : item.getText(at);
            }
        }
        return null;
    }

    private static int width(Table table, String text) {
        GC gc = new GC(table);
        try {
            return gc.textExtent(text).x;
        } finally {
            gc.dispose();
        }
    }
}
