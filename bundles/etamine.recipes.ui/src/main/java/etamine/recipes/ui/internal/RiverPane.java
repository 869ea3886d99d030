package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Cards;
import etamine.recipes.RiverPapers;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.Palette;
import etamine.widgets.RiverDrawing;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** What flows into the recipe and what falls away: the river above, the same as a table below. */
final class RiverPane implements RecipePage {
    private static final int COLUMNS = 5;
    private static final int NOTE_LINES = 3; // the rest is scrolled to: the drawing is what somebody came for

    private final Desk desk;
    private final RiverModel model;
    private final Composite pane;
    private final Button batch;
    private final Button print;
    private final Button save;
    private final Text notes;
    private final RiverDrawing river;
    private final ListTable<RiverRow> table;
    private Optional<Recipe> recipe = Optional.empty();
    private Optional<RiverView> view = Optional.empty();

    RiverPane(Composite parent, Desk desk) {
        this.desk = desk;
        this.model = new RiverModel(desk.ware().insight().rivers(), desk.model()::text);
        pane = new Composite(parent, SWT.NONE);
        pane.setLayout(new GridLayout(COLUMNS, false));
        Button portion = choice("One portion", "choice:portion");
        portion.setSelection(true);
        batch = choice("Whole batch", "choice:batch");
        Label space = new Label(pane, SWT.NONE);
        space.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        print = button("Print", "action:print-river", this::print);
        save = button("Save…", "action:save-river", this::save);
        notes = Spoken.id(new Text(pane, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL), "river:notes");
        Spoken.name(notes, "What the river does not know");
        notes.setBackground(pane.getBackground());
        notes.addListener(SWT.Traverse, event -> event.doit = true);
        notes.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, COLUMNS, 1));
        notes.setForeground(Palette.of(pane).text(Tone.WARN));
        SashForm sash = new SashForm(pane, SWT.VERTICAL);
        sash.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, COLUMNS, 1));
        river = RiverDrawing.in(sash).onPick(this::picked);
        Spoken.id(river, "drawing:river");
        table = new ListTable<>(sash, "table:river", RiverRow::key, columns())
                .whenEmpty("Nothing flows yet: write what goes in and what it makes.")
                .onSelect(rows -> rows.stream().findFirst().ifPresent(this::selected));
        sash.setWeights(76, 24);
        refresh();
    }

    private Button choice(String text, String id) {
        Button button = Spoken.id(new Button(pane, SWT.RADIO), id);
        button.setText(text);
        button.addListener(SWT.Selection, event -> {
            if (button.getSelection()) {
                refresh();
            }
        });
        return button;
    }

    private Button button(String text, String id, Runnable run) {
        Button button = Spoken.id(new Button(pane, SWT.PUSH), id);
        button.setText(text);
        button.addListener(SWT.Selection, event -> run.run());
        return button;
    }

    private static List<Column<RiverRow>> columns() {
        Comparator<RiverRow> asItFlows = Comparator.comparingInt(RiverRow::place);
        return List.of(
                Column.words("From", 5, RiverRow::from).sorted(asItFlows),
                Column.words("What", 5, RiverRow::what),
                Column.words("To", 6, RiverRow::to),
                Column.figures("Amount", 3, RiverRow::amount, Comparator.comparing(RiverRow::exact)));
    }

    @Override
    public Control control() {
        return pane;
    }

    @Override
    public void show(Optional<Recipe> selected) {
        recipe = selected;
        control().setVisible(selected.isPresent());
        refresh();
    }

    @Override
    public void focus() {
        river.setFocus();
    }

    private void refresh() {
        view = recipe.map(shown -> model.view(shown, batch.getSelection()));
        view.ifPresentOrElse(
                shown -> {
                    river.show(shown.title(), shown.pools(), shown.streams());
                    table.setRows(shown.rows());
                },
                () -> {
                    river.show("No recipe selected", List.of(), List.of());
                    table.setRows(List.of());
                });
        String text = String.join("\n", view.map(RiverView::notes).orElse(List.of()));
        notes.setText(text);
        notes.setVisible(!text.isEmpty());
        GridData room = (GridData) notes.getLayoutData();
        room.exclude = text.isEmpty();
        room.heightHint = Math.min(NOTE_LINES, text.split("\n").length * 2) * notes.getLineHeight();
        boolean drawn = view.filter(shown -> !shown.pools().isEmpty()).isPresent();
        print.setEnabled(drawn && papers().isPresent());
        save.setEnabled(drawn && papers().isPresent());
        pane.requestLayout();
    }

    private void picked(String node) {
        view.flatMap(shown -> model.explain(shown, node)).ifPresent(desk.frame()::explain);
    }

    private void selected(RiverRow row) {
        river.pick(row.node());
        picked(row.node());
    }

    private Optional<RiverPapers> papers() {
        return desk.ware().insight().riverPapers().get();
    }

    private Cards.Sheet sheet() {
        Optional<Cards> cards = desk.ware().insight().cards().get();
        return cards.map(known -> known.usual().sheet()).orElse(Cards.Sheet.A4);
    }

    private void print() {
        view.ifPresent(shown ->
                papers().ifPresent(papers -> desk.frame().print(papers.printout(shown.river(), sheet()))));
    }

    private void save() {
        view.ifPresent(shown ->
                papers().ifPresent(papers -> desk.frame().save(papers.printout(shown.river(), sheet()))));
    }
}
