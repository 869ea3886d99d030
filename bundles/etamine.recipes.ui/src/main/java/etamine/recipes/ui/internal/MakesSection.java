package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.widgets.EditGrid;
import etamine.widgets.FormPane;
import etamine.widgets.GridColumn;
import etamine.widgets.Spoken;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What a recipe gives: one thing or several, what takes a value out, and how a batch behaves. */
final class MakesSection {
    private final FormPane form;
    private final Desk desk;
    private final FormFields fields;
    private final EditGrid makes;
    private final Button whole;
    private final Label balance;
    private String shown = "";

    MakesSection(FormPane form, FormFields fields, Desk desk) {
        this.form = form;
        this.desk = desk;
        this.fields = fields;
        form.heading("Makes");
        makes = form.wide(this::grid)
                .onMove((row, by) -> desk.edit(shown, recipe -> recipe.withMakes(Rows.moved(recipe.makes(), row, by))));
        fields.small(Field.ABSORBS);
        fields.small(Field.REDUCES_TO);
        whole = form.small("Batches", "field:whole", cell -> new Button(cell, SWT.CHECK));
        whole.setText("Only whole");
        whole.setToolTipText("A batch cannot be split: scaling gives whole batches");
        whole.addListener(SWT.Selection, event -> wholePicked());
        balance = form.remark("");
        Spoken.id(balance, "balance");
    }

    private EditGrid grid(Composite cell) {
        List<GridColumn> columns = List.of(
                GridColumn.entry("item", 7).completing(desk.model().words()::complete),
                GridColumn.entry("quantity", 4).such("380 g"),
                GridColumn.entry("credited at", 4).such("1.00 / kg"),
                GridColumn.entry("market value", 4).such("9.50 / kg"));
        return new EditGrid(
                cell,
                "grid:makes",
                columns,
                (about, row, cells) ->
                        fields.attempt(about, desk.model().tables().make(row, cells)));
    }

    private void wholePicked() {
        boolean picked = whole.getSelection();
        desk.edit(shown, recipe -> recipe.withMaking(recipe.making().withWhole(picked)));
    }

    void show(Recipe recipe) {
        shown = recipe.id();
        makes.show(recipe.id(), desk.model().tables().makes(recipe));
        whole.setSelection(recipe.making().whole());
    }

    void checked(Checked checked) {
        if (checked.recipe().equals(shown)) {
            form.say(balance, checked.balance());
        }
    }

    void focusRow(int row) {
        makes.focusRow(row);
    }
}
