package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import etamine.widgets.EditGrid;
import etamine.widgets.FormPane;
import etamine.widgets.GridColumn;
import java.util.List;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Measures of the thing as it is, and its preparations with their yields. */
final class MeasuresPage implements Page {
    private final FormPane form;
    private final EditGrid measures;
    private final EditGrid preparations;

    MeasuresPage(Composite parent, Saving saving) {
        form = new FormPane(parent);
        form.heading("Measures");
        measures = form.wide(cell -> new EditGrid(
                cell,
                "grid:measures",
                List.of(
                        GridColumn.entry("so much", 6).such("1 cup"),
                        GridColumn.entry("is so much", 6).such("150 g")),
                (about, row, cells) -> saving.attempt(about, TableText.measure(row, cells))));
        form.heading("Preparations");
        preparations = form.wide(cell -> new EditGrid(
                cell,
                "grid:preparations",
                List.of(
                        GridColumn.entry("prepared", 5).such("peeled, diced"),
                        GridColumn.entry("yield, %", 2).such("74"),
                        GridColumn.entry("measures of its own", 5).such("1 cup = 156 g"),
                        GridColumn.entry("where the yield comes from", 6)),
                (about, row, cells) -> saving.attempt(about, TableText.preparation(row, cells))));
        form.remark(
                "The yield is what is left of what was bought, by weight. A yield you weighed yourself is recorded as a test.");
    }

    @Override
    public void show(Ingredient ingredient) {
        measures.show(ingredient.id(), TableText.measures(ingredient.item()));
        preparations.show(ingredient.id(), TableText.preparations(ingredient));
        form.reflow();
    }

    @Override
    public Control control() {
        return form;
    }
}
