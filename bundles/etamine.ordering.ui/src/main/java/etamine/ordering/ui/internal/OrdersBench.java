package etamine.ordering.ui.internal;

import etamine.base.Subject;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.Prompt;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

/** Orders, what is left short, and pars, a tab each. */
final class OrdersBench implements Bench {
    private static final int SHORT = 1;
    private static final int PARS = 2;

    private final Frame frame;
    private final OrdersModel model;
    private final Path folder;
    private final TabFolder tabs;
    private final OrdersTab orders;
    private final ListTable<ShortRow> leftShort;
    private final ParsTab pars;

    OrdersBench(Composite parent, Frame frame, OrdersModel model, ParsModel parsModel, Path folder) {
        this.frame = frame;
        this.model = model;
        this.folder = folder;
        tabs = new TabFolder(parent, SWT.NONE);
        Spoken.id(tabs, "tabs:ordering");
        orders = new OrdersTab(tabs, frame, model, this::plan);
        leftShort = new ListTable<>(tabs, "table:left-short", ShortRow::key, shortColumns())
                .whenEmpty(
                        "Nothing is known to be left short. Plan to see what the coming week needs.",
                        "Plan the coming week",
                        this::plan)
                .onSelect(rows -> rows.stream().findFirst().map(model::explain).ifPresent(frame::explain))
                .onOpen(row -> frame.go(new Subject("item", row.item())));
        pars = new ParsTab(tabs, frame, parsModel);
        tab("Orders", orders.control());
        tab("Left short", leftShort);
        tab("Pars", pars.control());
        tabs.addListener(SWT.Selection, event -> frame.actionsChanged());
        refresh();
    }

    private void tab(String name, Control control) {
        TabItem item = new TabItem(tabs, SWT.NONE);
        item.setText(name);
        item.setControl(control);
    }

    private static List<Column<ShortRow>> shortColumns() {
        return List.of(
                Column.words("What", 1, ShortRow::kind)
                        .withIcon(row -> row.kind().equals("short") ? "warning" : row.kind())
                        .withTone(row -> row.kind().equals("short") ? Tone.WARN : Tone.PLAIN),
                Column.words("Ingredient", 3, ShortRow::name),
                Column.words("Day", 2, ShortRow::day),
                Column.words("Quantity", 2, ShortRow::quantity),
                Column.words("Why", 10, ShortRow::why));
    }

    private void plan() {
        frame.work("Planning the coming week", model::planAndDraft, drafted -> {
            refresh();
            int missing = (int) model.leftShort().stream()
                    .filter(row -> row.kind().equals("short"))
                    .count();
            String drafts = drafted == 1 ? "1 order is drafted" : drafted + " orders are drafted";
            frame.say(missing == 0 ? drafts + "." : drafts + "; " + missing + " ingredients are left short.");
        });
    }

    private void issue() {
        List<String> ids = orders.toIssue();
        if (ids.isEmpty()) {
            frame.warn("There is no draft to issue; plan first.");
            return;
        }
        String title = ids.size() == 1 ? "Issue " + ids.get(0) : "Issue " + ids.size() + " orders";
        Prompt.line(frame.window(), title, "Folder for the files", folder.toString(), OrdersBench::folderProblem)
                .ifPresent(text -> frame.work(title, progress -> model.issue(ids, Path.of(text)), this::issued));
    }

    private static Optional<String> folderProblem(String text) {
        return text.isBlank() ? Optional.of("Write the folder where the files should go.") : Optional.empty();
    }

    private void issued(OrdersModel.Issue issue) {
        frame.say(issue.said());
        if (!issue.problems().isEmpty()) {
            frame.warn(String.join(" ", issue.problems()));
        }
        refresh();
        model.drafts().stream().findFirst().ifPresent(orders::select);
    }

    @Override
    public List<BenchAction> actions() {
        return tabs.getSelectionIndex() == PARS ? parActions() : orderActions();
    }

    /** What comes next stands first: issuing while there are drafts, else planning. */
    private List<BenchAction> orderActions() {
        int drafts = orders.toIssue().size();
        String label = drafts == 0 ? "Issue" : drafts == 1 ? "Issue 1 draft" : "Issue " + drafts + " drafts";
        BenchAction plan =
                BenchAction.of("plan", "Plan the week", "plan", this::plan).onKey(SWT.MOD1 | 'L');
        BenchAction issue = BenchAction.of("issue", label, "issue", this::issue)
                .onKey(SWT.MOD1 | 'I')
                .when(() -> !orders.toIssue().isEmpty());
        return List.of(
                drafts > 0 ? issue : plan,
                drafts > 0 ? plan : issue,
                BenchAction.of("add-line", "Add line", "add", orders::addLine)
                        .onKey(SWT.MOD1 | 'N')
                        .when(orders::isDraftSelected),
                BenchAction.of("drop", "Drop or call off", "remove", orders::drop)
                        .when(orders::canDrop));
    }

    private List<BenchAction> parActions() {
        return List.of(
                BenchAction.of("add-par", "Add par", "add", pars::add).onKey(SWT.MOD1 | 'N'),
                BenchAction.of("remove-par", "Take par away", "remove", pars::removeSelected)
                        .when(pars::hasSelection));
    }

    @Override
    public void refresh() {
        pars.refresh();
        leftShort.setRows(model.leftShort());
        orders.refresh();
    }

    @Override
    public void show(Subject subject) {
        switch (subject.kind()) {
            case "order" -> open(0, () -> orders.select(subject.id()));
            case "par" -> open(PARS, () -> pars.select(subject.id()));
            case "plan" -> open(0, () -> model.draftFor(subject.id()).ifPresentOrElse(orders::select, this::plan));
            default -> open(SHORT, leftShort::setFocus);
        }
    }

    private void open(int tab, Runnable then) {
        tabs.setSelection(tab);
        then.run();
        frame.actionsChanged();
    }

    @Override
    public void focus() {
        if (tabs.getSelectionIndex() == PARS) {
            pars.focus();
        } else {
            orders.focus();
        }
    }
}
