package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.widgets.EditGrid;
import etamine.widgets.FormPane;
import etamine.widgets.GridColumn;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;

/** The work: what to do, how long hands are needed and how long it takes care of itself, where and how hot. */
final class StepsSection {
    private final Desk desk;
    private final EditGrid steps;
    private String shown = "";

    StepsSection(FormPane form, Desk desk) {
        this.desk = desk;
        form.heading("Steps");
        form.remark("Times in minutes, or as 1 h 30 or 2 d. Temperatures and holding times are this kitchen's own; "
                + "local codes decide what is safe.");
        steps = form.wide(this::grid)
                .onMove((row, by) -> desk.edit(shown, recipe -> recipe.withSteps(Rows.moved(recipe.steps(), row, by))));
    }

    private EditGrid grid(Composite cell) {
        List<GridColumn> columns = List.of(
                GridColumn.entry("what to do", 12),
                GridColumn.entry("hands", 2).such("10"),
                GridColumn.entry("waits", 2).such("1 h 30"),
                GridColumn.entry("equipment", 4).under(),
                GridColumn.entry("temperature", 3).such("at \u00b0C").under(),
                GridColumn.entry("holds", 2).under(),
                GridColumn.entry("after step", 3).under(),
                GridColumn.entry("station", 3).under());
        return new EditGrid(cell, "grid:steps", columns, this::save);
    }

    private Optional<String> save(String about, int row, List<String> cells) {
        Attempt attempt = TableText.step(row, cells);
        if (attempt instanceof Attempt.Edit understood) {
            desk.edit(about, understood.edit());
            return Optional.empty();
        }
        return Optional.of(((Attempt.Bad) attempt).sentence());
    }

    void show(Recipe recipe) {
        shown = recipe.id();
        steps.show(recipe.id(), TableText.steps(recipe));
    }

    void focusRow(int row) {
        steps.focusRow(row);
    }
}
