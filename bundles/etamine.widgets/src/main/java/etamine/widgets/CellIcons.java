package etamine.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.jspecify.annotations.Nullable;

/**
 * Icons in native tables, sharp at every zoom. Above 100 % some toolkits enlarge a cell's bitmap, so the cell gets an
 * empty image of the size and the icon is drawn over it.
 */
public final class CellIcons {
    private static final String KEY = "etamine.icon.";

    private CellIcons() {}

    /** Prepares a new table; call it before its items get icons. */
    public static void sharpen(Table table) {
        if (enlarged(table)) {
            table.addListener(SWT.PaintItem, CellIcons::paint);
        }
    }

    /** Puts an icon into a cell, or takes it away. */
    public static void set(TableItem item, int column, @Nullable Image icon) {
        Table table = item.getParent();
        if (icon == null || !enlarged(table)) {
            item.setData(KEY + column, null);
            item.setImage(column, icon);
            return;
        }
        item.setData(KEY + column, icon);
        item.setImage(column, Icons.blank(table.getDisplay(), icon.getBounds().width));
    }

    private static boolean enlarged(Table table) {
        return table.getMonitor().getZoom() != 100;
    }

    private static void paint(Event event) {
        TableItem item = (TableItem) event.item;
        if (item.getData(KEY + event.index) instanceof Image icon) {
            Rectangle place = item.getImageBounds(event.index);
            event.gc.drawImage(icon, place.x, place.y + (place.height - icon.getBounds().height) / 2);
        }
    }
}
