package etamine.widgets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Slider;

/**
 * A table of native text fields, with an empty row at its end for adding. A row is saved when it is left or Enter is
 * pressed; emptied, it goes. What cannot be saved stays as typed under a sentence, also when another thing is shown in
 * between. Only the rows in view have fields, so that two thousand are as quick as twenty.
 */
public final class EditGrid extends Composite {
    /** Rows in view at once. */
    static final int VIEW = 24;

    private final String id;
    private final List<GridColumn> columns;
    private final Saving saving;
    private final List<GridRow> rows = new ArrayList<>();
    private final GridDrafts drafts = new GridDrafts();
    private final List<String> blank;
    private final Slider slider;
    private List<List<String>> texts = List.of();
    private IntConsumer onRow = row -> {};
    private BiConsumer<Integer, Integer> onMove = (row, by) -> {};
    private String subject = "";
    private int top;
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

    /** A grid of no rows but the empty one. */
    public EditGrid(Composite parent, String id, List<GridColumn> columns, Saving saving) {
        super(parent, SWT.NONE);
        this.id = id;
        this.columns = List.copyOf(columns);
        this.saving = saving;
        blank = columns.stream().map(column -> "").toList();
        slider = new Slider(this, SWT.VERTICAL);
        slider.setVisible(false);
        slider.addListener(SWT.Selection, event -> scroll(slider.getSelection()));
        addListener(SWT.MouseVerticalWheel, this::wheel);
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
     * @param all for each row the texts of all columns
     */
    public void show(String about, List<List<String>> all) {
        boolean fresh = !about.equals(subject);
        if (fresh) {
            leave();
            top = 0;
        }
        subject = about;
        texts = List.copyOf(all);
        fill(fresh);
        if (goOn) {
            goOn = false;
            focusRow(texts.size());
        }
    }

    /** Saves what is typed and keeps aside what cannot be saved. */
    private void leave() {
        List.copyOf(rows).forEach(GridRow::leave);
        for (int at = 0; at < rows.size(); at++) {
            GridRow row = rows.get(at);
            drafts.keep(subject, top + at, row.isEdited() ? row.cells() : List.of());
            row.forget();
        }
    }

    private void fill(boolean fresh) {
        int inView = Math.min(texts.size() + 1, VIEW);
        top = Math.max(0, Math.min(top, texts.size() + 1 - inView));
        resize(inView);
        for (int at = 0; at < inView; at++) {
            rows.get(at).show(top + at < texts.size() ? texts.get(top + at) : blank);
            if (fresh) {
                drafts.of(subject, top + at).ifPresent(rows.get(at)::type);
            }
        }
        boolean scrolls = texts.size() + 1 > VIEW;
        slider.setVisible(scrolls);
        if (scrolls) {
            slider.setValues(top, 0, texts.size() + 1, VIEW, 1, VIEW - 1);
        }
        requestLayout();
        FormPane.reflow(this);
    }

    void scroll(int wanted) {
        int first = Math.max(0, Math.min(wanted, texts.size() + 1 - VIEW));
        if (first != top) {
            leave();
            top = first;
            fill(true);
        }
    }

    void wheel(Event event) {
        if (slider.getVisible()) {
            scroll(top - Integer.signum(event.count) * 3);
            event.doit = false;
        }
    }

    /** The row the keyboard is in. */
    public OptionalInt focusedRow() {
        return IntStream.range(0, rows.size())
                .filter(at -> rows.get(at).isFocused())
                .map(at -> top + at)
                .findFirst();
    }

    /** Puts the keyboard in a row, scrolling to it; answers whether it could. */
    public boolean focusRow(int row) {
        return reach(row) && rows.get(row - top).focus();
    }

    private boolean reach(int row) {
        if (row < 0 || row > texts.size()) {
            return false;
        }
        if (row < top || row >= top + VIEW) {
            scroll(row < top ? row : row - VIEW + 1);
        }
        return true;
    }

    /** Goes on with Tab past the rows in view; answers whether there are more. */
    boolean tabOn(GridRow row, int by) {
        int at = rows.indexOf(row) + by;
        boolean leavesView = at < 0 || at >= rows.size();
        if (!leavesView || !reach(top + at)) {
            return false;
        }
        GridRow target = by < 0 ? rows.get(0) : rows.get(rows.size() - 1);
        return by < 0 ? target.focusLast() : target.focus();
    }

    List<GridColumn> columns() {
        return columns;
    }

    String cellId(int row, int column) {
        return id + ":" + row + ":" + column;
    }

    void entered(GridRow row) {
        onRow.accept(place(row));
    }

    private int place(GridRow row) {
        return top + rows.indexOf(row);
    }

    Optional<String> save(GridRow row, List<String> cells) {
        int place = place(row);
        Optional<String> problem = saving.save(subject, place, cells);
        if (problem.isEmpty()) {
            drafts.keep(subject, place, List.of());
        }
        return problem;
    }

    void move(GridRow row, int by) {
        int place = place(row);
        int target = place + by;
        if (target >= 0 && target < texts.size() && place < texts.size()) {
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
        goOn = !focusRow(place(row) + 1);
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
