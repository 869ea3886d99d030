package etamine.ingredients.ui.internal;

import etamine.ingredients.ui.internal.MergeModel.Pair;
import etamine.ingredients.ui.internal.MergeModel.Told;
import etamine.shell.Frame;
import etamine.widgets.ChoiceField;
import etamine.widgets.Column;
import etamine.widgets.FormDialog;
import etamine.widgets.FormPane;
import etamine.widgets.ListTable;
import etamine.widgets.Spoken;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Text;

/** Asks which ingredient goes and which stays, with likely pairs and what the merge would rewrite. */
final class MergeDialog {
    private static final int PAIRS_HEIGHT = 150;
    private static final int PREVIEW_HEIGHT = 150;
    private static final int WIDTH = 640;

    private final Frame frame;
    private final MergeModel model;
    private final List<Pair> pairs;
    private final String first;
    private Optional<ChoiceField> goes = Optional.empty();
    private Optional<ChoiceField> stays = Optional.empty();
    private Optional<Text> preview = Optional.empty();
    private Optional<Told> told = Optional.empty();

    /**
     * A dialog.
     *
     * @param first the id of the ingredient that goes, as far as anybody has said; empty for nobody
     */
    MergeDialog(Frame frame, MergeModel model, List<Pair> pairs, String first) {
        this.frame = frame;
        this.model = model;
        this.pairs = pairs;
        this.first = first;
    }

    /** Asks; {@code merge} gets who goes and who stays. */
    void ask(BiConsumer<String, String> merge) {
        new FormDialog(frame.window(), "Merge two ingredients", this::fill)
                .button("Merge")
                .check(this::problem)
                .onAccept(() -> merge.accept(id(goes), id(stays)))
                .ask();
    }

    private void fill(FormPane form) {
        form.remark(
                "These may be the same. The one that goes is replaced everywhere in the book by the one that stays.");
        ListTable<Pair> table = form.wide(cell -> new ListTable<>(cell, "table:duplicates", Pair::key, columns())
                .whenEmpty("No two ingredients look the same. Choose two below."));
        GridData data = (GridData) table.getLayoutData();
        data.heightHint = PAIRS_HEIGHT;
        data.widthHint = WIDTH;
        goes = Optional.of(form.choice("This one goes", "field:goes", model.choices()));
        stays = Optional.of(form.choice("This one stays", "field:stays", model.choices()));
        Text text = form.wide(cell -> new Text(cell, SWT.BORDER | SWT.MULTI | SWT.READ_ONLY | SWT.V_SCROLL | SWT.WRAP));
        ((GridData) text.getLayoutData()).heightHint = PREVIEW_HEIGHT;
        Spoken.id(text, "field:merge-preview");
        Spoken.name(text, "What the merge rewrites");
        preview = Optional.of(text);
        goes.orElseThrow().onChange(chosen -> look());
        stays.orElseThrow().onChange(chosen -> look());
        table.setRows(pairs);
        table.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        goes.orElseThrow().choose(first);
        if (first.isEmpty()) {
            pairs.stream().findFirst().ifPresent(pair -> table.select(pair.key()));
        }
    }

    private static List<Column<Pair>> columns() {
        return List.of(
                Column.words("Stays", 4, Pair::stayName),
                Column.words("Goes", 4, Pair::goName),
                Column.words("Because", 4, Pair::why));
    }

    private void choose(Pair pair) {
        goes.ifPresent(field -> field.choose(pair.goes()));
        stays.ifPresent(field -> field.choose(pair.stays()));
    }

    private static String id(Optional<ChoiceField> field) {
        return field.flatMap(ChoiceField::id).orElse("");
    }

    /** Tries the merge in the background; nothing is written. */
    private void look() {
        String from = id(goes);
        String into = id(stays);
        told = Optional.empty();
        if (from.isEmpty() || into.isEmpty()) {
            say("Choose which one goes and which one stays.");
            return;
        }
        frame.work("Looking what a merge rewrites", progress -> model.tell(from, into), found -> {
            if (from.equals(id(goes)) && into.equals(id(stays))) {
                told = Optional.of(found);
                say(found.text());
            }
        });
    }

    private void say(String text) {
        preview.filter(area -> !area.isDisposed()).ifPresent(area -> area.setText(text));
    }

    private Optional<String> problem() {
        if (id(goes).isEmpty() || id(stays).isEmpty()) {
            return Optional.of("Choose which one goes and which one stays.");
        }
        return told.filter(found -> !found.possible()).map(Told::text);
    }
}
