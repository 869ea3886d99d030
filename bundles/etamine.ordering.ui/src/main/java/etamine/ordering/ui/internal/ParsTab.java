package etamine.ordering.ui.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.kitchen.par.Par;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The pars as a table with a column for each weekday. */
final class ParsTab {
    private final Frame frame;
    private final ParsModel model;
    private final ListTable<ParRow> list;

    ParsTab(Composite parent, Frame frame, ParsModel model) {
        this.frame = frame;
        this.model = model;
        list = new ListTable<>(parent, "table:pars", ParRow::item, columns())
                .findable("Find a par")
                .whenEmpty("No pars are set yet.", "Add the first par", this::add)
                .onSelect(rows -> rows.stream().findFirst().ifPresent(this::explain))
                .onOpen(this::edit)
                .onDelete(rows -> rows.forEach(this::remove));
    }

    private static List<Column<ParRow>> columns() {
        List<Column<ParRow>> columns = new ArrayList<>();
        columns.add(Column.words("Ingredient", 5, ParRow::name));
        columns.add(Column.figures(
                "Par", 2, ParRow::level, ParRow.by(row -> Optional.of(row.par().par()))));
        for (DayOfWeek day : DayOfWeek.values()) {
            String heading = day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
            columns.add(Column.figures(heading, 2, row -> row.on(day), ParRow.by(row -> row.levelOn(day))));
        }
        columns.add(Column.figures(
                "Order at", 2, ParRow::orderAt, ParRow.by(row -> row.par().orderAt())));
        columns.add(Column.figures(
                "Room for", 2, ParRow::capacity, ParRow.by(row -> row.par().capacity())));
        return columns;
    }

    Control control() {
        return list;
    }

    void add() {
        new ParDialog(model, Optional.empty()).ask(frame.window()).ifPresent(this::save);
    }

    private void edit(ParRow row) {
        new ParDialog(model, Optional.of(row.par())).ask(frame.window()).ifPresent(this::save);
    }

    private void save(Par par) {
        frame.work(
                "Saving the par",
                progress -> {
                    model.save(par);
                    return par.item();
                },
                item -> {
                    refresh();
                    list.select(item);
                });
    }

    private void remove(ParRow row) {
        frame.work(
                "Taking the par of " + row.name() + " away",
                progress -> {
                    model.remove(row.item());
                    return row.name();
                },
                name -> {
                    frame.say("The par of " + name + " is taken away; undo brings it back.");
                    refresh();
                });
    }

    private void explain(ParRow row) {
        frame.explain(Explanation.leaf(row.name(), row.level(), "par set in the house")
                .about(new Subject("item", row.item())));
    }

    void removeSelected() {
        list.selection().forEach(this::remove);
    }

    boolean hasSelection() {
        return list.selected().isPresent();
    }

    void refresh() {
        list.setRows(model.rows());
    }

    void select(String item) {
        list.select(item);
    }

    void focus() {
        list.setFocus();
    }
}
