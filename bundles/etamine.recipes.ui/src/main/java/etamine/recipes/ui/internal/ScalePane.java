package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Scaled;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The recipe for another amount; it appears while something is typed into its field. */
final class ScalePane implements RecipePage {
    private static final int TABLE_HEIGHT = 220;

    private final RecipesModel model;
    private final Composite pane;
    private final Text amount;
    private final Label outcome;
    private final ListTable<ScaledLine> lines;
    private String recipe = "";

    ScalePane(Composite parent, Desk desk) {
        this.model = desk.model();
        pane = new Composite(parent, SWT.NONE);
        pane.setLayout(new GridLayout(2, false));
        Label caption = new Label(pane, SWT.NONE);
        caption.setText("Scale to");
        amount = new Text(pane, SWT.BORDER | SWT.SINGLE);
        amount.setMessage("3 l, 12 portion, or covers: 40");
        GridData narrow = new GridData(SWT.LEFT, SWT.CENTER, true, false);
        narrow.widthHint = 220;
        amount.setLayoutData(narrow);
        Spoken.label(amount, caption);
        Spoken.id(amount, "field:scale-to");
        outcome = new Label(pane, SWT.WRAP);
        outcome.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1));
        lines = new ListTable<>(pane, "table:scaled", ScaledLine::key, columns());
        GridData table = new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1);
        table.heightHint = TABLE_HEIGHT;
        lines.setLayoutData(table);
        amount.addListener(SWT.Modify, event -> refresh());
        amount.addListener(SWT.KeyDown, event -> {
            if (event.character == SWT.ESC) {
                amount.setText("");
            }
        });
        refresh();
    }

    private static List<Column<ScaledLine>> columns() {
        Comparator<ScaledLine> asWritten = Comparator.comparing(ScaledLine::place);
        return List.of(
                Column.words("", 2, ScaledLine::part).sorted(asWritten),
                Column.figures("Quantity", 3, ScaledLine::quantity, asWritten),
                Column.words("Item", 6, ScaledLine::item),
                Column.words("Prepared", 5, ScaledLine::as),
                Column.words("Basis", 2, ScaledLine::basis));
    }

    @Override
    public Composite control() {
        return pane;
    }

    @Override
    public void show(Optional<Recipe> selected) {
        recipe = selected.map(Recipe::id).orElse("");
        refresh();
    }

    @Override
    public void focus() {
        amount.setFocus();
        amount.selectAll();
    }

    private void refresh() {
        boolean wanted = !amount.getText().isBlank() && !recipe.isEmpty();
        List<ScaledLine> scaled = List.of();
        String text = "";
        Tone tone = Tone.PLAIN;
        if (wanted) {
            Scaled answer = model.scale(recipe, amount.getText());
            if (answer instanceof Scaled.Batch batch) {
                scaled = model.lines(batch.recipe());
                text = said(batch);
            } else {
                text = ((Scaled.Impossible) answer).text();
                tone = Tone.WARN;
            }
        }
        outcome.setText(text);
        outcome.setVisible(!text.isEmpty());
        ((GridData) outcome.getLayoutData()).exclude = text.isEmpty();
        outcome.setForeground(tone == Tone.PLAIN ? null : Palette.of(pane).text(tone));
        lines.setRows(scaled);
        lines.setVisible(!scaled.isEmpty());
        ((GridData) lines.getLayoutData()).exclude = scaled.isEmpty();
        pane.requestLayout();
    }

    private static String said(Scaled.Batch batch) {
        String factor = batch.factor()
                .toDecimal(4, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        String whole = batch.batches() + (batch.batches() == 1 ? " whole batch" : " whole batches");
        return "Times " + factor + ", or " + whole + ". " + String.join(" ", batch.remarks());
    }
}
