package etamine.inventory.ui.internal;

import etamine.kitchen.stock.Place;
import etamine.shell.Frame;
import etamine.widgets.Bars;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Stock against par above; below it the lots and movements of the selected item, and bars of what is lowest. */
final class StockPage {
    private final Frame frame;
    private final StockModel model;
    private final Composite page;
    private final Combo places;
    private final ListTable<StockRow> list;
    private final Bars bars;
    private final ListTable<LotRow> lots;
    private final ListTable<MovementRow> movements;
    private List<Place> known = List.of();

    StockPage(Composite parent, Frame frame, StockModel model, Runnable first) {
        this.frame = frame;
        this.model = model;
        page = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        page.setLayout(layout);
        Label caption = new Label(page, SWT.NONE);
        caption.setText("Place");
        places = Spoken.id(new Combo(page, SWT.READ_ONLY), "field:place-filter");
        Spoken.label(places, caption);
        places.addListener(SWT.Selection, event -> refresh());
        SashForm sash = new SashForm(page, SWT.VERTICAL);
        sash.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1));
        list = new ListTable<>(sash, "table:stock", StockRow::item, columns())
                .findable("Find in stock")
                .whenEmpty("Nothing has come in yet.", "Receive the first goods", first)
                .onSelect(rows -> selectionChanged());
        SashForm lower = new SashForm(sash, SWT.HORIZONTAL);
        bars = new Bars(lower);
        SashForm figures = new SashForm(lower, SWT.VERTICAL);
        lots = new ListTable<>(figures, "table:lots", LotRow::key, lotColumns()).whenEmpty("No lots.");
        movements = new ListTable<>(figures, "table:movements", MovementRow::id, movementColumns())
                .whenEmpty("Choose an item to see what moved.")
                .onSelect(rows -> frame.actionsChanged());
        figures.setWeights(42, 58);
        lower.setWeights(36, 64);
        sash.setWeights(52, 48);
    }

    private static List<Column<StockRow>> columns() {
        return List.of(
                Column.<StockRow>words("Item", 4, StockRow::name).withIcon(row -> row.negative() ? "warning" : ""),
                Column.figures("On hand", 2, StockRow::onHand, Comparator.comparing(StockRow::onHand))
                        .withTone(row -> row.negative() ? Tone.BAD : Tone.PLAIN),
                Column.figures("On order", 2, StockRow::onOrder, Comparator.comparing(StockRow::onOrder)),
                Column.figures("Par", 2, StockRow::par, Comparator.comparing(StockRow::par)),
                Column.figures("Of par", 2, StockRow::percent, Comparator.comparing(StockRow::share)),
                Column.figures("Short", 2, StockRow::shortBy, Comparator.comparing(StockRow::share))
                        .withTone(row -> row.isShort() ? Tone.WARN : Tone.PLAIN),
                Column.figures("Value", 2, StockRow::value, Comparator.comparing(StockRow::worth)),
                Column.words("Next use-by", 3, StockRow::nextUseBy)
                        .sorted(Comparator.comparing(StockRow::day))
                        .withIcon(row -> row.due() ? "expiry" : "")
                        .withTone(row -> row.due() ? Tone.WARN : Tone.PLAIN));
    }

    private static List<Column<LotRow>> lotColumns() {
        return List.of(
                Column.words("Lot in", 3, LotRow::place),
                Column.figures("Left", 2, LotRow::quantity, Comparator.comparing(LotRow::quantity)),
                Column.words("Use by", 3, LotRow::useBy)
                        .sorted(Comparator.comparing(LotRow::day))
                        .withIcon(row -> row.due() ? "expiry" : "")
                        .withTone(row -> row.due() ? Tone.WARN : Tone.PLAIN),
                Column.words("Cost", 3, LotRow::cost),
                Column.words("Mark", 2, LotRow::mark));
    }

    private static List<Column<MovementRow>> movementColumns() {
        return List.of(
                Column.words("When", 4, MovementRow::at),
                Column.words("What", 3, MovementRow::kind),
                Column.figures("Quantity", 3, MovementRow::quantity, Comparator.comparing(MovementRow::quantity)),
                Column.words("Place", 3, MovementRow::place),
                Column.words("Note", 4, MovementRow::note));
    }

    private void selectionChanged() {
        Optional<StockRow> row = list.selected();
        lots.setRows(row.map(model::lots).orElse(List.of()));
        movements.setRows(row.map(chosen -> model.movements(chosen.item())).orElse(List.of()));
        row.ifPresentOrElse(chosen -> frame.explain(model.explain(chosen.item())), frame::explainNothing);
        frame.actionsChanged();
    }

    void refresh() {
        offerPlaces();
        List<StockRow> rows = model.rows(frame.day(), place());
        list.setRows(rows);
        bars.show(model.bars(rows));
        if (list.selected().isEmpty() && !rows.isEmpty()) {
            list.select(list.shown().get(0).item());
        }
        selectionChanged();
    }

    private void offerPlaces() {
        List<Place> now = model.places();
        if (now.equals(known) && places.getItemCount() > 0) {
            return;
        }
        Optional<String> chosen = place();
        known = now;
        places.removeAll();
        places.add("All places");
        now.forEach(place -> places.add(place.name()));
        int index = chosen.map(id -> now.stream().map(Place::id).toList().indexOf(id))
                .orElse(-1);
        places.select(index + 1);
        page.layout();
    }

    Composite control() {
        return page;
    }

    /** The place chosen; empty for all. */
    Optional<String> place() {
        int index = places.getSelectionIndex() - 1;
        return index >= 0 && index < known.size() ? Optional.of(known.get(index).id()) : Optional.empty();
    }

    Optional<StockRow> selected() {
        return list.selected();
    }

    Optional<MovementRow> movement() {
        return movements.selected();
    }

    void select(String item) {
        places.select(0);
        refresh();
        list.select(item);
    }

    void focus() {
        list.setFocus();
    }
}
