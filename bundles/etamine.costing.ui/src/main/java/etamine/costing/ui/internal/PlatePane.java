package etamine.costing.ui.internal;

import etamine.base.Subject;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.Fonts;
import etamine.widgets.ListTable;
import etamine.widgets.Palette;
import etamine.widgets.Sentence;
import etamine.widgets.Spoken;
import etamine.widgets.StackBlocks;
import etamine.widgets.Tone;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What one plate costs: its lines as a band of blocks over their table, and the drinks chosen for it. */
final class PlatePane extends Composite {
    private final Label why;
    private final Label doubts;
    private final StackBlocks blocks;
    private final SashForm tables;
    private final ListTable<PlateDetail.Line> lines;
    private final ListTable<PlateDetail.Pair> pairs;

    PlatePane(Composite parent, Frame frame) {
        super(parent, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        why = Spoken.id(new Label(this, SWT.WRAP), "plate:why");
        why.setFont(Fonts.plain(why));
        why.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        doubts = Spoken.id(new Label(this, SWT.WRAP), "plate:doubts");
        doubts.setFont(Fonts.plain(doubts));
        doubts.setForeground(Palette.of(this).text(Tone.WARN));
        doubts.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        blocks = new StackBlocks(this).bandOnly();
        blocks.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        tables = new SashForm(this, SWT.VERTICAL);
        tables.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        lines = new ListTable<>(tables, "table:cost-lines", PlateDetail.Line::key, lineColumns())
                .whenEmpty("Select a plate to see what it is made of.")
                .onOpen(line -> frame.go(new Subject("item", line.item())));
        pairs = new ListTable<>(tables, "table:pairs", PlateDetail.Pair::recipe, pairColumns())
                .onOpen(pair -> frame.go(new Subject("recipe", pair.recipe())));
        tables.setWeights(62, 38);
    }

    private static List<Column<PlateDetail.Line>> lineColumns() {
        Comparator<PlateDetail.Line> asShown = Comparator.comparing(PlateDetail.Line::number);
        return List.of(
                Column.figures("#", 1, line -> String.valueOf(line.number()), asShown),
                Column.words("Made of", 5, PlateDetail.Line::name),
                Column.figures("Quantity", 1, PlateDetail.Line::quantity, asShown),
                Column.figures("As purchased", 1, PlateDetail.Line::asPurchased, asShown),
                Column.figures("Price", 1, PlateDetail.Line::price, asShown),
                Column.figures("Cost", 1, PlateDetail.Line::cost, asShown),
                Column.figures("Share", 1, PlateDetail.Line::share, asShown),
                Column.words("Where the price is from", 4, PlateDetail.Line::source));
    }

    private static List<Column<PlateDetail.Pair>> pairColumns() {
        Comparator<PlateDetail.Pair> asShown = Comparator.comparing(PlateDetail.Pair::level);
        return List.of(
                Column.words("Drink with it", 5, PlateDetail.Pair::name),
                Column.words("Level", 2, PlateDetail.Pair::level),
                Column.figures("Pour", 1, PlateDetail.Pair::pour, asShown),
                Column.figures("Pour cost", 1, PlateDetail.Pair::percent, asShown),
                Column.figures("Net price", 1, PlateDetail.Pair::net, asShown),
                Column.figures("Food cost of both", 1, PlateDetail.Pair::together, asShown),
                Column.figures("Both leave", 1, PlateDetail.Pair::contribution, asShown));
    }

    void show(Optional<PlateDetail> detail) {
        Sentence.say(why, detail.map(PlateDetail::why).orElse(""));
        Sentence.say(
                doubts, detail.map(found -> String.join(" ", found.doubts())).orElse(""));
        List<StackBlocks.Block> parts = detail.map(PlateDetail::blocks).orElse(List.of());
        blocks.show(parts);
        ((GridData) blocks.getLayoutData()).exclude = parts.isEmpty();
        blocks.setVisible(!parts.isEmpty());
        lines.setRows(detail.map(PlateDetail::lines).orElse(List.of()));
        List<PlateDetail.Pair> drinks = detail.map(PlateDetail::pairs).orElse(List.of());
        pairs.setRows(drinks);
        tables.setMaximizedControl(drinks.isEmpty() ? lines : null);
        layout(true);
    }
}
