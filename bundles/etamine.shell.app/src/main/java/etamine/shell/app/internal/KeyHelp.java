package etamine.shell.app.internal;

import etamine.widgets.Column;
import etamine.widgets.FormDialog;
import etamine.widgets.ListTable;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Shell;

/** The list of keys. */
final class KeyHelp {
    private static final List<Row> ALWAYS = List.of(
            new Row("table:open", "Enter", "Open the row", "Tables"),
            new Row("table:delete", "Delete", "Remove the selected rows, where that is possible", "Tables"),
            new Row("table:copy", KeyText.of(SWT.MOD1 | 'C'), "Copy the selected rows as text", "Tables"),
            new Row("table:type", "A letter", "Find in the table", "Tables"),
            new Row("ribbon:day", "Left, Right", "Go from day to day", "Week ribbon"),
            new Row("field:day", "Up, Down", "A day on, a day back", "Day fields"),
            new Row("field:choice", "Down", "Open the list of choices", "Choice fields"));

    private KeyHelp() {}

    /** One key. */
    record Row(String id, String key, String does, String where) {}

    static void show(Shell parent, List<Row> rows) {
        List<Row> all = new ArrayList<>(rows);
        all.addAll(ALWAYS);
        new FormDialog(parent, "Keys", form -> {
                    ListTable<Row> table = form.wide(area -> new ListTable<Row>(
                            area,
                            "table:keys",
                            Row::id,
                            List.of(
                                    Column.words("Key", 3, Row::key),
                                    Column.words("What it does", 6, Row::does),
                                    Column.words("Where", 3, Row::where))));
                    ((GridData) table.getLayoutData()).heightHint = 420;
                    table.setRows(all);
                })
                .closeOnly()
                .ask();
    }
}
