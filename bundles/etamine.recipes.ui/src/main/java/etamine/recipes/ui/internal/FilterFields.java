package etamine.recipes.ui.internal;

import etamine.widgets.PickList;
import etamine.widgets.Spoken;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** The fields that narrow the list of recipes. */
final class FilterFields {
    private final Composite pane;
    private final Combo kind;
    private final Combo station;
    private final Combo free;
    private final Text cost;
    private final Button untested;
    private final Button archived;
    private final Runnable changed;
    private List<String> stations = List.of();

    FilterFields(Composite parent, Runnable changed) {
        this.changed = changed;
        pane = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, true);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 3;
        pane.setLayout(layout);
        pane.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        kind = combo("filter:kind", "Any kind", RecipeFilter.kinds());
        station = combo("filter:station", "Any station", List.of());
        free = combo("filter:free", "Free of …", RecipeFilter.allergens());
        free.setToolTipText("Known not to contain it; where allergens are unknown, a recipe is left out");
        cost = Spoken.id(new Text(pane, SWT.BORDER | SWT.SINGLE), "filter:cost");
        cost.setMessage("Costs at most");
        Spoken.name(cost, "Costs at most, a portion");
        cost.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        cost.addListener(SWT.Modify, event -> changed.run());
        untested = check("filter:untested", "Drafts only");
        archived = check("filter:archived", "Archived");
    }

    private Combo combo(String id, String any, List<String> choices) {
        Combo combo = Spoken.id(PickList.in(pane), id);
        Spoken.name(combo, any);
        combo.add(any);
        choices.forEach(combo::add);
        combo.select(0);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 60;
        combo.setLayoutData(data);
        combo.addListener(SWT.Selection, event -> changed.run());
        return combo;
    }

    private Button check(String id, String label) {
        Button button = Spoken.id(new Button(pane, SWT.CHECK), id);
        button.setText(label);
        button.addListener(SWT.Selection, event -> changed.run());
        return button;
    }

    Composite control() {
        return pane;
    }

    /** Offers these stations, keeping the one chosen while it is there. */
    void stations(List<String> now) {
        if (now.equals(stations)) {
            return;
        }
        String chosen = station.getText();
        stations = List.copyOf(now);
        String any = station.getItem(0);
        station.setItems(any);
        stations.forEach(station::add);
        station.select(Math.max(0, station.indexOf(chosen)));
    }

    RecipeFilter with(String text) {
        return new RecipeFilter(
                text,
                chosen(kind),
                chosen(station),
                chosen(free),
                cost.getText(),
                untested.getSelection(),
                archived.getSelection());
    }

    private static String chosen(Combo combo) {
        return combo.getSelectionIndex() > 0 ? combo.getText() : "";
    }

    void clear(boolean showArchived) {
        List.of(kind, station, free).forEach(combo -> combo.select(0));
        cost.setText("");
        untested.setSelection(false);
        archived.setSelection(showArchived);
    }
}
