package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Scaled;
import etamine.recipes.Vessel;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.Palette;
import etamine.widgets.PickList;
import etamine.widgets.Sentence;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The recipe for other portions, another amount, the moulds at hand, or what there is of something. */
final class ScalePage implements RecipePage {
    private final Desk desk;
    private final ScaleModel model;
    private final Composite page;
    private final Combo wish;
    private final Text wanted;
    private final Combo vessels;
    private final Label outcome;
    private final Label remarks;
    private final ListTable<ScaledLine> lines;
    private final Map<ScaleWish, String> typed = new EnumMap<>(ScaleWish.class);
    private ScaleWish by = ScaleWish.PORTIONS;
    private Optional<Recipe> recipe = Optional.empty();

    ScalePage(Composite parent, Desk desk) {
        this.desk = desk;
        this.model = new ScaleModel(desk.ware(), desk.model());
        page = new Composite(parent, SWT.NONE);
        page.setLayout(new GridLayout(4, false));
        Label caption = new Label(page, SWT.NONE);
        caption.setText("Scale to");
        wish = Spoken.id(PickList.in(page), "field:scale-by");
        wish.setItems(Stream.of(ScaleWish.values()).map(ScaleWish::label).toArray(String[]::new));
        wish.select(0);
        Spoken.label(wish, caption);
        wanted = Spoken.id(new Text(page, SWT.BORDER | SWT.SINGLE), "field:scale-to");
        Spoken.name(wanted, "Scale to");
        wanted.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        vessels = vessels();
        outcome = sentence("scale:outcome");
        remarks = sentence("scale:remarks");
        remarks.setForeground(Palette.of(page).text(Tone.WARN));
        lines = new ListTable<>(page, "table:scaled", ScaledLine::key, columns())
                .whenEmpty("Write how many portions, how much, which moulds, or what there is.");
        lines.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 4, 1));
        wish.addListener(SWT.Selection, event -> wished());
        wanted.addListener(SWT.Modify, event -> refresh());
        wished();
    }

    private Label sentence(String id) {
        Label label = Spoken.id(new Label(page, SWT.WRAP), id);
        label.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 4, 1));
        return label;
    }

    private Combo vessels() {
        Combo combo = Spoken.id(PickList.in(page), "field:vessel");
        Spoken.name(combo, "Gastronorm container");
        combo.add("GN container …");
        desk.ware().scales().vessels().gastronorm().forEach(vessel -> combo.add(vessel.name()));
        combo.select(0);
        combo.setToolTipText(Vessel.CAUTION);
        combo.setLayoutData(new GridData());
        combo.addListener(SWT.Selection, event -> picked(combo));
        return combo;
    }

    private void picked(Combo combo) {
        if (combo.getSelectionIndex() > 0) {
            String count = wanted.getText().strip().replaceAll("(?s)\\s*x.*", "");
            wanted.setText((count.matches("[0-9]{1,4}") ? count : "1") + " x " + combo.getText());
            combo.select(0);
            wanted.setFocus();
            wanted.setSelection(0, wanted.getText().indexOf(' '));
        }
    }

    private static List<Column<ScaledLine>> columns() {
        Comparator<ScaledLine> asWritten = Comparator.comparing(ScaledLine::place);
        return List.of(
                Column.words("", 2, ScaledLine::part).sorted(asWritten),
                Column.figures("Exact", 3, ScaledLine::exact, asWritten),
                Column.figures("To measure", 3, ScaledLine::measured, asWritten),
                Column.figures("Off", 2, ScaledLine::off, asWritten),
                Column.words("Item", 8, ScaledLine::named).keeping(24),
                Column.words("Basis", 2, ScaledLine::basis));
    }

    private void wished() {
        typed.put(by, wanted.getText());
        by = ScaleWish.values()[Math.max(0, wish.getSelectionIndex())];
        wanted.setMessage(by.hint());
        wanted.setText(typed.getOrDefault(by, ""));
        vessels.setVisible(by == ScaleWish.VESSELS);
        ((GridData) vessels.getLayoutData()).exclude = by != ScaleWish.VESSELS;
        page.layout();
        refresh();
    }

    private void refresh() {
        Optional<Scaled> answer = answer();
        Optional<Scaled.Batch> batch =
                answer.filter(Scaled.Batch.class::isInstance).map(Scaled.Batch.class::cast);
        String impossible = answer.filter(Scaled.Impossible.class::isInstance)
                .map(each -> ((Scaled.Impossible) each).text())
                .orElse("");
        Sentence.say(outcome, batch.map(ScaleModel::said).orElse(impossible));
        outcome.setForeground(impossible.isEmpty() ? null : Palette.of(page).text(Tone.BAD));
        Sentence.say(
                remarks, batch.map(each -> String.join("\n", each.remarks())).orElse(""));
        lines.setRows(batch.map(model::lines).orElseGet(List::of));
        page.layout();
        desk.frame().actionsChanged();
    }

    /** The recipe as scaled now; empty while nothing sensible is typed. */
    Optional<Scaled> answer() {
        return recipe.filter(each -> !wanted.getText().isBlank())
                .map(each -> model.scale(each.id(), by, wanted.getText()));
    }

    @Override
    public Composite control() {
        return page;
    }

    @Override
    public void show(Optional<Recipe> selected) {
        recipe = selected;
        page.setVisible(selected.isPresent());
        refresh();
    }

    @Override
    public void focus() {
        wanted.setFocus();
        wanted.selectAll();
    }
}
