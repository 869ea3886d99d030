package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.widgets.EditGrid;
import etamine.widgets.FormPane;
import etamine.widgets.GridColumn;
import java.util.List;
import org.eclipse.swt.widgets.Composite;

/** How a plate or drink is sold, and what is poured with it. */
final class MenuSection {
    private final Desk desk;
    private final FormFields fields;
    private final EditGrid drinks;

    MenuSection(FormPane form, FormFields fields, Desk desk) {
        this.desk = desk;
        this.fields = fields;
        form.heading("On the menu");
        List.of(Field.MENU_PRICE, Field.TAX, Field.PACKAGING, Field.TARGET).forEach(fields::small);
        List.of(Field.Q_PERCENT, Field.Q_AMOUNT).forEach(fields::small);
        form.remark(
                "Q factor: a percentage for what is too small to measure, an amount for what comes with every plate.");
        form.heading("Drinks with it");
        drinks = form.wide(this::grid);
    }

    private EditGrid grid(Composite cell) {
        List<GridColumn> columns = List.of(
                GridColumn.entry("drink", 8).completing(desk.model()::completeDrink),
                GridColumn.entry("price level, such as house", 5));
        return new EditGrid(
                cell,
                "grid:drinks",
                columns,
                (about, row, cells) ->
                        fields.attempt(about, desk.model().tables().drink(row, cells)));
    }

    void show(Recipe recipe) {
        drinks.show(recipe.id(), desk.model().tables().drinks(recipe));
    }

    void focusDrink(int row) {
        drinks.focusRow(row);
    }
}
