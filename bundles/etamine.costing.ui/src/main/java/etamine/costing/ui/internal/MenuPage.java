package etamine.costing.ui.internal;

import etamine.base.Subject;
import etamine.costing.Days;
import etamine.costing.MenuReport;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.Fonts;
import etamine.widgets.ListTable;
import etamine.widgets.Palette;
import etamine.widgets.ScatterPlot;
import etamine.widgets.Spoken;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** How often each item sells against what it leaves: a plot with its table. */
final class MenuPage implements CostPage {
    private final Frame frame;
    private final MenuModel model;
    private final PaperRack papers;
    private final Composite body;
    private final PeriodBar period;
    private final Combo compare;
    private final Combo groups;
    private final Label sentence;
    private final Label notes;
    private final ScatterPlot plot;
    private final ListTable<MenuReport.Item> items;
    private Optional<MenuReport> report = Optional.empty();
    private int asked;

    MenuPage(Composite parent, Frame frame, MenuModel model, PaperRack papers) {
        this.frame = frame;
        this.model = model;
        this.papers = papers;
        body = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 2;
        body.setLayout(layout);
        period = new PeriodBar(body, model::today, 2, days -> read());
        period.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        compare = combo("field:compare", "What is compared");
        compare.setItems("Each kind by itself", "All together");
        compare.select(0);
        compare.addListener(SWT.Selection, event -> read());
        groups = combo("field:group", "Which are shown");
        groups.addListener(SWT.Selection, event -> paint());
        sentence = line("menu:sentence");
        sentence.setFont(Fonts.bold(body));
        SashForm sash = new SashForm(body, SWT.VERTICAL);
        sash.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        plot = new ScatterPlot(sash).onPick(this::picked);
        items = new ListTable<>(sash, "table:menu", MenuReport.Item::recipe, columns())
                .whenEmpty(
                        "Nothing was sold in these days. What was sold is written under Covers; where Covers is not in the"
                                + " list of stations, start it under Modules.")
                .onSelect(rows -> selected())
                .onOpen(row -> frame.go(new Subject("cost", row.recipe())));
        sash.setWeights(58, 42);
        notes = line("menu:notes");
        notes.setFont(Fonts.small(body));
        notes.setForeground(Palette.of(body).quiet());
        period.show(model.start());
    }

    private Combo combo(String id, String name) {
        Combo combo = Spoken.id(new Combo(period, SWT.READ_ONLY), id);
        Spoken.name(combo, name);
        combo.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
        return combo;
    }

    private Label line(String id) {
        Label label = Spoken.id(new Label(body, SWT.WRAP), id);
        label.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return label;
    }

    private static List<Column<MenuReport.Item>> columns() {
        return List.of(
                Column.words("Item", 5, MenuReport.Item::name),
                Column.<MenuReport.Item>words("Class", 2, item -> MenuModel.word(item.standing()))
                        .sorted(Comparator.comparing(MenuReport.Item::standing)),
                Column.figures(
                        "Sold", 1, item -> String.valueOf(item.sold()), Comparator.comparing(MenuReport.Item::sold)),
                Column.figures(
                        "Share",
                        1,
                        item -> Figures.percent(item.sharePercent()),
                        Comparator.comparing(MenuReport.Item::sharePercent)),
                Column.figures(
                        "Cost", 1, item -> Figures.money(item.cost()), Comparator.comparing(MenuReport.Item::cost)),
                Column.figures(
                        "Net price",
                        1,
                        item -> Figures.money(item.price()),
                        Comparator.comparing(MenuReport.Item::price)),
                Column.figures(
                        "Contribution",
                        1,
                        item -> Figures.money(item.contribution()),
                        Comparator.comparing(MenuReport.Item::contribution)),
                Column.figures(
                        "Of all sold",
                        1,
                        item -> Figures.money(item.totalContribution()),
                        Comparator.comparing(MenuReport.Item::totalContribution)));
    }

    private void read() {
        Days days = period.days().orElseGet(model::start);
        boolean together = compare.getSelectionIndex() == 1;
        int turn = ++asked;
        frame.work("Reading what was sold", progress -> model.read(days, together), found -> {
            if (turn == asked) {
                report = Optional.of(found);
                offerGroups(found);
                paint();
            }
        });
    }

    private void offerGroups(MenuReport found) {
        String shown = groups.getText();
        groups.setItems(found.groups().stream().map(MenuReport.Group::name).toArray(String[]::new));
        int before = groups.indexOf(shown);
        groups.select(Math.max(0, before));
        groups.setVisible(groups.getItemCount() > 1);
        period.layout();
    }

    private Optional<MenuReport.Group> group() {
        int at = Math.max(0, groups.getSelectionIndex());
        return report.filter(found -> at < found.groups().size())
                .map(found -> found.groups().get(at));
    }

    private void paint() {
        Optional<MenuReport.Group> group = group();
        sentence.setText(group.map(model::sentence).orElse("").replace("&", "&&"));
        notes.setText(String.join(" ", report.map(model::notes).orElse(List.of(MenuReport.CAUTION)))
                .replace("&", "&&"));
        plot.show(group.map(model::plot)
                .orElse(new ScatterPlot.Plot("", "", List.of(), Optional.empty(), Optional.empty(), List.of())));
        items.setRows(group.map(MenuReport.Group::items).orElse(List.of()));
        body.layout();
        group.map(MenuReport.Group::explained).ifPresent(frame::explain);
        frame.actionsChanged();
    }

    private void picked(String recipe) {
        items.select(recipe);
    }

    private void selected() {
        items.selected().ifPresent(item -> {
            plot.pick(item.recipe());
            group().map(group -> model.explain(item, group)).ifPresent(frame::explain);
        });
    }

    @Override
    public Control control() {
        return body;
    }

    @Override
    public List<BenchAction> actions() {
        return List.of(papers.action(() -> report.map(
                                found -> List.of(new PaperRack.Sheet("menu analysis", rack -> rack.menu(found))))
                        .orElse(List.of()))
                .when(report::isPresent));
    }

    @Override
    public void refresh() {
        read();
    }

    @Override
    public void focus() {
        items.setFocus();
    }
}
