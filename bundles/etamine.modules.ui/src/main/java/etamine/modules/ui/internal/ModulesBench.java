package etamine.modules.ui.internal;

import etamine.base.Subject;
import etamine.base.Subscription;
import etamine.modules.ModuleException;
import etamine.modules.ModuleList;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import java.util.List;
import java.util.function.Predicate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/** The table of modules with what can be done to the selected one. */
final class ModulesBench implements Bench {
    private final Frame frame;
    private final ModuleList modules;
    private final Composite page;
    private final ListTable<ModuleRow> table;

    ModulesBench(Composite parent, Frame frame, ModuleList modules) {
        this.frame = frame;
        this.modules = modules;
        page = new Composite(parent, SWT.NONE);
        page.setLayout(new GridLayout());
        Label remark = new Label(page, SWT.WRAP);
        remark.setText("A stopped module does nothing and its station goes; what it keeps stays in the book.");
        remark.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        table = new ListTable<>(page, "table:modules", ModuleRow::id, columns())
                .findable("Find a module")
                .onSelect(selected -> selected());
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        Display display = parent.getDisplay();
        Subscription changes = modules.onChange(() -> display.asyncExec(this::refreshIfThere));
        page.addListener(SWT.Dispose, event -> changes.close());
        refresh();
    }

    private static List<Column<ModuleRow>> columns() {
        return List.of(
                Column.words("Module", 2, ModuleRow::id),
                Column.words("What it is for", 8, ModuleRow::name),
                Column.words("State", 1, ModuleRow::state)
                        .withIcon(ModuleRow::icon)
                        .withTone(ModuleRow::tone),
                Column.words("Remark", 2, ModuleRow::remark));
    }

    private void selected() {
        table.selected().ifPresentOrElse(row -> frame.explain(row.story()), frame::explainNothing);
        frame.actionsChanged();
    }

    private void refreshIfThere() {
        if (!page.isDisposed()) {
            refresh();
        }
    }

    private boolean selectedIs(Predicate<ModuleRow> what) {
        return table.selected().filter(what).isPresent();
    }

    private void start() {
        table.selected().ifPresent(row -> change("Starting " + row.id(), () -> modules.start(row.id())));
    }

    private void stop() {
        table.selected().ifPresent(row -> change("Stopping " + row.id(), () -> modules.stop(row.id())));
    }

    private void change(String label, Step step) {
        frame.work(
                label,
                progress -> {
                    step.run();
                    return label;
                },
                done -> refresh());
    }

    private interface Step {
        void run() throws ModuleException;
    }

    @Override
    public List<BenchAction> actions() {
        return List.of(
                BenchAction.of("start", "Start", "start", this::start).when(() -> selectedIs(ModuleRow::canStart)),
                BenchAction.of("stop", "Stop", "stop", this::stop).when(() -> selectedIs(ModuleRow::canStop)));
    }

    @Override
    public void refresh() {
        table.setRows(modules.modules().stream().map(ModuleRow::new).toList());
        selected();
    }

    @Override
    public void show(Subject subject) {
        table.select(subject.id());
        selected();
    }

    @Override
    public void focus() {
        table.setFocus();
    }
}
