package etamine.shell.app.internal;

import etamine.widgets.CellIcons;
import etamine.widgets.Icons;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** The stations down the left, in the order the work happens: a native list, so that arrows and screen readers work. */
final class StationRail extends Composite {
    private static final int WIDTH = 188;
    private final Table table;
    private final Map<String, Integer> counts = new HashMap<>();
    private List<StationPlace> places = List.of();
    private Consumer<String> onPick = id -> {};

    StationRail(Composite parent) {
        super(parent, SWT.NONE);
        setLayout(Layouts.plain(1));
        table = Spoken.id(new Table(this, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL), "stations");
        table.setBackground(Palette.of(this).panel());
        Spoken.name(table, "Stations");
        CellIcons.sharpen(table);
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
        data.widthHint = WIDTH;
        data.verticalIndent = 6;
        data.horizontalIndent = 4;
        table.setLayoutData(data);
        table.addListener(SWT.Selection, event -> {
            dress();
            onPick.accept(picked());
        });
    }

    void onPick(Consumer<String> listener) {
        onPick = listener;
    }

    List<StationPlace> places() {
        return places;
    }

    /** Shows these stations, keeping the picked one if it is still there. */
    void show(List<StationPlace> newPlaces) {
        if (newPlaces.equals(places)) {
            return;
        }
        String kept = picked();
        places = List.copyOf(newPlaces);
        table.removeAll();
        for (StationPlace place : places) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setData("id", "station:" + place.id());
            item.setText(label(place));
        }
        pick(kept);
    }

    /** Writes a number beside a station; none when it is zero. */
    void count(String id, int number) {
        counts.put(id, number);
        for (int at = 0; at < places.size(); at++) {
            if (places.get(at).id().equals(id)) {
                table.getItem(at).setText(label(places.get(at)));
            }
        }
    }

    void pick(String id) {
        for (int at = 0; at < places.size(); at++) {
            if (places.get(at).id().equals(id)) {
                table.setSelection(at);
                dress();
                return;
            }
        }
        table.deselectAll();
        dress();
    }

    @Override
    public boolean setFocus() {
        return !table.isDisposed() && table.setFocus();
    }

    private String picked() {
        int at = table.getSelectionIndex();
        return at >= 0 && at < places.size() ? places.get(at).id() : "";
    }

    private void dress() {
        Dressing.of(table, this::drawIcons);
    }

    private void drawIcons() {
        int selected = table.getSelectionIndex();
        for (int at = 0; at < places.size(); at++) {
            int color = at == selected ? SWT.COLOR_LIST_SELECTION_TEXT : SWT.COLOR_LIST_FOREGROUND;
            Image icon = Icons.image(
                    getDisplay(), places.get(at).icon(), 24, getDisplay().getSystemColor(color));
            CellIcons.set(table.getItem(at), 0, icon);
        }
    }

    private String label(StationPlace place) {
        int count = counts.getOrDefault(place.id(), 0);
        return "  " + place.name() + (count > 0 ? "  (" + count + ")" : "");
    }
}
