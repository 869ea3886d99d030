package etamine.recipes.ui.internal;

import etamine.widgets.Column;
import etamine.widgets.FormDialog;
import etamine.widgets.FormPane;
import etamine.widgets.ListTable;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Shows line by line what was found in a file and asks what is to be taken over. */
final class ImportDialog {
    private static final int TABLE_HEIGHT = 320;
    private final Shell parent;
    private final ImportModel model;

    ImportDialog(Shell parent, ImportModel model) {
        this.parent = parent;
        this.model = model;
    }

    /** Whether what the model has chosen is to be taken over. */
    boolean ask() {
        return dialog().ask();
    }

    FormDialog dialog() {
        return new FormDialog(parent, "Import from " + model.found().file().getFileName(), this::fill)
                .button("Take over")
                .check(model::problem);
    }

    private void fill(FormPane form) {
        ListTable<ImportModel.Row> table = form.wide(cell -> new ListTable<>(
                cell,
                "table:import",
                ImportModel.Row::id,
                List.of(
                        Column.words("Recipe", 4, ImportModel.Row::recipe),
                        Column.words("Line in the file", 6, ImportModel.Row::text),
                        Column.words("Understood", 3, ImportModel.Row::state)
                                .withIcon(row -> row.doubtful() ? "warning" : ""),
                        Column.words("What to do", 8, ImportModel.Row::remark))));
        GridData tall = new GridData(SWT.FILL, SWT.TOP, true, false);
        tall.heightHint = TABLE_HEIGHT;
        tall.widthHint = 900;
        table.setLayoutData(tall);
        table.setRows(model.rows());
        Label outlook = form.remark(model.outlook());
        int unknown = model.unknownIngredients();
        if (unknown > 0) {
            String label = "Add the " + (unknown == 1 ? "new ingredient" : unknown + " new ingredients")
                    + ", with price and allergens unknown";
            check(form, label, "check:import-new", model::newIngredients, outlook);
        }
        check(
                form,
                "Take recipes with gaps; what is missing stands in their notes",
                "check:import-gaps",
                model::gaps,
                outlook);
    }

    private interface Setting {
        void set(boolean on);
    }

    private void check(FormPane form, String label, String id, Setting setting, Label outlook) {
        Button button = form.check(label, id);
        button.addListener(SWT.Selection, event -> {
            setting.set(button.getSelection());
            outlook.setText(model.outlook());
            form.reflow();
        });
    }
}
