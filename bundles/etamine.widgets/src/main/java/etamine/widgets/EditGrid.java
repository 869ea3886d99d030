package etamine.widgets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/**
 * A short table of native text fields, with an empty row at its end for adding. A row is saved when it is left or Enter
 * is pressed; emptied, it goes. What cannot be saved stays as typed under a sentence, also when another thing is shown
 * in between.
 */
public final class EditGrid extends Composite {
    private final String id;
    private final List<GridColumn> columns;
    private final Saving saving;
    private final List<GridRow> rows = new ArrayList<>();
    private final Map<String, Map<Integer, List<String>>> drafts = new HashMap<>();
    private IntConsumer onRow = row -> {};
    private BiConsumer<Integer, Integer> onMove = (row, by) -> {};
    private String subject = "";
    private boolean goOn;

    /** What happens to a row that was edited. */
    @FunctionalInterface
    public interface Saving {
        /**
         * Saves a row.
         *
         * @param about what the grid is about
         * @param row its place; one past the last for a new one
         * @param cells the editable cells' texts, stripped; all empty to remove it
         * @return what is wrong with them, if anything
         */
        Optional<String> save(String about, int row, List<String> cells);
    }

    /**
     * One column.
     *
     * @param heading above it
     * @param weight its share of the width
     * @param editable whether it can be typed into
     * @param below whether it stands in a second line below the first columns
     * @param complete how to complete what is typed; nothing for none
     * @param hint an example that stands in an empty field; none when empty
     */
    public record GridColumn(
            String heading,
            int weight,
            boolean editable,
            boolean below,
            Function<String, List<String>> complete,
            String hint) {
        /** A column to type into. */
        public static GridColumn entry(String heading, int weight) {
            return new GridColumn(heading, weight, true, false, typed -> List.of(), "");
        }

        /** A column to look at. */
        public static GridColumn figure(String heading, int weight) {
            return new GridColumn(heading, weight, false, false, typed -> List.of(), "");
        }

        /** The same with completions. */
        public GridColumn completing(Function<String, List<String>> completions) {
            return new GridColumn(heading, weight, editable, below, completions, hint);
        }

        /** The same in the second line of each row; its heading stands in its empty fields. Put these columns last. */
        public GridColumn under() {
            return new GridColumn(heading, weight, editable, true, complete, hint);
        }

        /** The same with an example in its empty field below the last row. */
        public GridColumn such(String example) {
            return new GridColumn(heading, weight, editable, below, complete, example);
        }
    }

    /** A grid of no rows but the empty one. */
    public EditGrid(Composite parent, String id, List<GridColumn> columns, Saving saving) {
        super(parent, SWT.NONE);
        this.id = id;
        this.columns = List.copyOf(columns);
        this.saving = saving;
        setLayout(new GridRowsLayout(weights(false), weights(true)));
        columns.stream().filter(column -> !column.below()).forEach(this::heading);
        new Label(this, SWT.NONE);
        resize(1);
    }

    /** Calls back with the row that the keyboard enters. */
    public EditGrid onRow(IntConsumer listener) {
        onRow = listener;
        return this;
    }

    /** Calls back with a row and -1 or 1 when Alt with the up or down arrow should move it; the keyboard goes along. */
    public EditGrid onMove(BiConsumer<Integer, Integer> listener) {
        onMove = listener;
        return this;
    }

    /**
     * Shows rows about some subject; rows being typed in about the same subject stay.
     *
     * @param texts for each row the texts of all columns
     */
    public void show(String about, List<List<String>> texts) {
        if (!about.equals(subject)) {
            rows.forEach(GridRow::leave);
            keepDrafts();
            rows.forEach(GridRow::forget);
        }
        boolean fresh = !about.equals(subject);
        subject = about;
        resize(texts.size() + 1);
        List<String> none = columns.stream().map(column -> "").toList();
        for (int row = 0; row < rows.size(); row++) {
            rows.get(row).show(row < texts.size() ? texts.get(row) : none);
        }
        if (fresh) {
            drafts.getOrDefault(about, Map.of()).forEach((row, cells) -> {
                if (row < rows.size()) {
                    rows.get(row).type(cells);
                }
            });
        }
        requestLayout();
        FormPane.reflow(this);
        if (goOn) {
            goOn = false;
            focusRow(rows.size() - 1);
        }
    }

    /** The row the keyboard is in. */
    public OptionalInt focusedRow() {
        return IntStream.range(0, rows.size())
                .filter(row -> rows.get(row).isFocused())
                .findFirst();
    }

    /** Puts the keyboard in a row; answers whether it could. */
    public boolean focusRow(int row) {
        return row < rows.size() && rows.get(row).focus();
    }

    List<GridColumn> columns() {
        return columns;
    }

    String cellId(int row, int column) {
        return id + ":" + row + ":" + column;
    }

    void entered(GridRow row) {
        onRow.accept(rows.indexOf(row));
    }

    Optional<String> save(GridRow row, List<String> cells) {
        int place = rows.indexOf(row);
        Optional<String> problem = saving.save(subject, place, cells);
        if (problem.isEmpty()) {
            drafts.getOrDefault(subject, new HashMap<>()).remove(place);
        }
        return problem;
    }

    void move(GridRow row, int by) {
        int place = rows.indexOf(row);
        int target = place + by;
        if (target >= 0 && target < rows.size() - 1 && place < rows.size() - 1) {
            onMove.accept(place, by);
            focusRow(target);
        }
    }

    private List<Integer> weights(boolean below) {
        return columns.stream()
                .filter(column -> column.below() == below)
                .map(GridColumn::weight)
                .toList();
    }

    /** Goes to the row below; below the last one it waits for the row that saving adds. */
    void next(GridRow row) {
        int after = rows.indexOf(row) + 1;
        if (after < rows.size()) {
            rows.get(after).focus();
        } else {
            goOn = true;
        }
    }

    private void keepDrafts() {
        Map<Integer, List<String>> edited = new HashMap<>();
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row).isEdited()) {
                edited.put(row, rows.get(row).cells());
            }
        }
        if (edited.isEmpty()) {
            drafts.remove(subject);
        } else {
            drafts.put(subject, edited);
        }
    }

    private void resize(int wanted) {
        while (rows.size() > wanted) {
            rows.remove(rows.size() - 1).dispose();
        }
        while (rows.size() < wanted) {
            rows.add(new GridRow(this, rows.size()));
        }
        // Where removing stands among the cells, somebody who types on after Tab would press it with the first blank.
        setTabList(rows.stream().flatMap(row -> row.tabs().stream()).toArray(Control[]::new));
    }

    private void heading(GridColumn column) {
        Label label = new Label(this, column.editable() ? SWT.NONE : SWT.RIGHT);
        label.setText(column.heading());
        label.setFont(Fonts.small(this));
        label.setForeground(Palette.of(this).quiet());
    }

    @Override
    public boolean setFocus() {
        return focusRow(0);
    }

    /** The native controls in order, for tests. */
    public List<Control> controls() {
        return List.of(getChildren());
    }
}
