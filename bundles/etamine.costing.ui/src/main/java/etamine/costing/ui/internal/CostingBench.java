package etamine.costing.ui.internal;

import etamine.base.Subject;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.Fonts;
import etamine.widgets.ListTable;
import etamine.widgets.Palette;
import etamine.widgets.StackBlocks;
import etamine.widgets.Tone;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The plates with their figures above, what the selected one is made of below. */
final class CostingBench implements Bench {
    private final Frame frame;
    private final CostingModel model;
    private final ListTable<CostRow> plates;
    private final Composite below;
    private final Label title;
    private final Label sentences;
    private final ScrolledComposite scroll;
    private final StackBlocks blocks;
    private final ListTable<CostDetail.Line> lines;
    private List<CostRow> rows = List.of();
    private boolean menuOnly = true;

    CostingBench(Composite parent, Frame frame, CostingModel model) {
        this.frame = frame;
        this.model = model;
        SashForm sash = new SashForm(parent, SWT.VERTICAL);
        plates = new ListTable<>(sash, "table:costs", CostRow::id, plateColumns())
                .findable("Find a plate or recipe")
                .whenEmpty("Nothing to cost yet. Recipes with a menu price appear here.")
                .onSelect(selected -> selected())
                .onOpen(row -> frame.go(new Subject("recipe", row.id())));
        below = new Composite(sash, SWT.NONE);
        below.setLayout(new GridLayout(2, false));
        title = new Label(below, SWT.WRAP);
        title.setFont(Fonts.heading(title));
        title.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        sentences = new Label(below, SWT.WRAP);
        sentences.setForeground(Palette.of(below).text(Tone.WARN));
        sentences.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        lines = new ListTable<>(below, "table:cost-lines", CostDetail.Line::item, lineColumns())
                .onOpen(line -> frame.go(new Subject("item", line.item())))
                .whenEmpty("Select a plate to see what it is made of.");
        lines.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        scroll = new ScrolledComposite(below, SWT.V_SCROLL);
        GridData place = new GridData(SWT.FILL, SWT.FILL, false, true);
        place.widthHint = 300;
        scroll.setLayoutData(place);
        blocks = new StackBlocks(scroll);
        scroll.setContent(blocks);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        sash.setWeights(55, 45);
        refresh();
    }

    private static List<Column<CostRow>> plateColumns() {
        return List.of(
                Column.words("Plate or recipe", 6, CostRow::name),
                Column.figures("Cost", 2, CostRow::costText, Comparator.comparing(CostRow::cost))
                        .withTone(row -> row.lower() ? Tone.WARN : Tone.PLAIN),
                Column.words("of one", 1, CostRow::each),
                Column.figures("Net price", 2, CostRow::netText, figure(CostRow::net)),
                Column.figures("Food cost", 2, CostRow::percentText, figure(CostRow::percent)),
                Column.figures("Contribution", 2, CostRow::contributionText, figure(CostRow::contribution)));
    }

    private static <V extends Comparable<? super V>> Comparator<CostRow> figure(Function<CostRow, Optional<V>> value) {
        return Comparator.comparing(
                row -> value.apply(row).orElse(null), Comparator.nullsFirst(Comparator.naturalOrder()));
    }

    private static List<Column<CostDetail.Line>> lineColumns() {
        Comparator<CostDetail.Line> asWritten = Comparator.comparing(line -> 0);
        return List.of(
                Column.words("Item", 5, CostDetail.Line::name),
                Column.figures("Quantity", 1, CostDetail.Line::quantity, asWritten),
                Column.figures("As purchased", 1, CostDetail.Line::asPurchased, asWritten),
                Column.figures("Price", 1, CostDetail.Line::price, asWritten),
                Column.figures("Cost", 1, CostDetail.Line::cost, asWritten));
    }

    private void selected() {
        Optional<CostRow> row = plates.selected();
        Optional<CostDetail> detail = row.flatMap(found -> model.detail(found.id()));
        title.setText(detail.map(CostDetail::title).orElse(""));
        String doubtful =
                detail.map(found -> String.join("\n", found.sentences())).orElse("");
        sentences.setText(doubtful);
        ((GridData) sentences.getLayoutData()).exclude = doubtful.isEmpty();
        sentences.setVisible(!doubtful.isEmpty());
        lines.setRows(detail.map(CostDetail::lines).orElse(List.of()));
        blocks.show(detail.map(CostDetail::blocks).orElse(List.of()));
        scroll.setMinHeight(blocks.computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
        below.layout(true, true);
        detail.ifPresentOrElse(found -> frame.explain(found.story()), frame::explainNothing);
        frame.actionsChanged();
    }

    private void list() {
        plates.setRows(rows.stream().filter(row -> !menuOnly || row.onMenu()).toList());
    }

    private void toggle() {
        menuOnly = !menuOnly;
        list();
        frame.actionsChanged();
    }

    private void openRecipe() {
        plates.selected().ifPresent(row -> frame.go(new Subject("recipe", row.id())));
    }

    @Override
    public List<BenchAction> actions() {
        String label = menuOnly ? "Show components too" : "Show the menu only";
        return List.of(
                BenchAction.of("which", label, "recipes", this::toggle).onKey(SWT.MOD1 | 'M'),
                BenchAction.of("open-recipe", "Open the recipe", "open", this::openRecipe)
                        .when(() -> plates.selected().isPresent()));
    }

    @Override
    public void refresh() {
        rows = model.rows();
        list();
        selected();
    }

    @Override
    public void show(Subject subject) {
        rows.stream().filter(row -> row.id().equals(subject.id())).findFirst().ifPresent(row -> {
            if (menuOnly && !row.onMenu()) {
                toggle();
            }
            plates.select(row.id());
            selected();
        });
    }

    @Override
    public void focus() {
        plates.setFocus();
    }
}
