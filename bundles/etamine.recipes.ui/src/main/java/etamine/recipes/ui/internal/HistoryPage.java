package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.widgets.Column;
import etamine.widgets.Fonts;
import etamine.widgets.ListTable;
import etamine.widgets.Spoken;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What a recipe was before: every revision, what differs between two, and the way back. */
final class HistoryPage implements RecipePage {
    private final Desk desk;
    private final HistoryModel model;
    private final Composite page;
    private final ListTable<RevisionRow> revisions;
    private final Label compared;
    private final Button restore;
    private final ListTable<DifferenceRow> differences;
    private Optional<Recipe> recipe = Optional.empty();

    HistoryPage(Composite parent, Desk desk) {
        this.desk = desk;
        this.model = new HistoryModel(desk.ware().past().revisions(), desk.model());
        page = new Composite(parent, SWT.NONE);
        page.setLayout(new GridLayout(2, false));
        revisions = new ListTable<>(page, "table:revisions", RevisionRow::key, revisionColumns())
                .onSelect(rows -> compare(rows))
                .whenEmpty("Nothing was changed yet.");
        GridData upper = new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1);
        upper.heightHint = 160;
        revisions.setLayoutData(upper);
        compared = Spoken.id(new Label(page, SWT.WRAP), "history:compared");
        compared.setFont(Fonts.bold(page));
        compared.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        restore = Spoken.id(new Button(page, SWT.PUSH), "history:restore");
        restore.setText("Bring this one back");
        restore.addListener(SWT.Selection, event -> restore());
        differences = new ListTable<>(page, "table:differences", DifferenceRow::key, differenceColumns())
                .whenEmpty("Nothing differs.");
        GridData lower = new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1);
        lower.heightHint = 200;
        differences.setLayoutData(lower);
    }

    private static List<Column<RevisionRow>> revisionColumns() {
        Comparator<RevisionRow> byNumber = Comparator.comparing(RevisionRow::number);
        return List.of(
                Column.figures("No.", 1, (RevisionRow row) -> Long.toString(row.number()), byNumber),
                Column.words("When", 3, RevisionRow::when).sorted(byNumber),
                Column.words("What was done", 6, RevisionRow::label));
    }

    private static List<Column<DifferenceRow>> differenceColumns() {
        Comparator<DifferenceRow> asWritten = Comparator.comparing(DifferenceRow::place);
        return List.of(
                Column.words("", 2, DifferenceRow::what).sorted(asWritten),
                Column.words("Where", 4, DifferenceRow::where),
                Column.words("Before", 5, DifferenceRow::before),
                Column.words("After", 5, DifferenceRow::after));
    }

    private void compare(List<RevisionRow> chosen) {
        HistoryModel.Comparison comparison = recipe.map(now -> model.compare(
                        now, chosen.stream().map(RevisionRow::number).toList()))
                .orElse(HistoryModel.NOTHING);
        compared.setText(comparison.title());
        differences.setRows(comparison.rows());
        restore.setEnabled(chosen.size() == 1 && comparison.restorable());
        page.layout();
    }

    private void restore() {
        Optional<RevisionRow> chosen = revisions.selected();
        recipe.filter(now -> chosen.isPresent())
                .ifPresent(now -> desk.work(
                        "Bringing back revision " + chosen.get().number() + " of " + now.name(),
                        () -> desk.ware()
                                .past()
                                .revisions()
                                .restore(now.id(), chosen.get().number())));
    }

    @Override
    public Composite control() {
        return page;
    }

    @Override
    public void show(Optional<Recipe> selected) {
        recipe = selected;
        page.setVisible(selected.isPresent());
        revisions.setRows(selected.map(model::rows).orElseGet(List::of));
        compare(revisions.selection());
    }

    @Override
    public void focus() {
        revisions.setFocus();
    }
}
