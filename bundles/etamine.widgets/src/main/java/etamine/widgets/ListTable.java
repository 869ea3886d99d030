package etamine.widgets;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/**
 * A native table that stays fast with thousands of rows and keeps what is selected when its rows change. Headings sort;
 * typing finds; Enter or a double click opens; Delete removes; copying puts the selected rows on the clipboard as text.
 *
 * @param <T> the row; use a value type, so that rows that did not change count as the same
 */
public final class ListTable<T> extends Composite {
    private final TableRows<T> rows;
    private final StackLayout stack = new StackLayout();
    private final Composite body;
    private final Table table;
    private final EmptyNote empty;
    private final EmptyNote unfound;
    private Optional<Text> finder = Optional.empty();
    private Optional<ColumnWidths> widths = Optional.empty();
    private Consumer<List<T>> onSelect = selected -> {};
    private Consumer<T> onOpen = row -> {};
    private Consumer<List<T>> onDelete = selected -> {};
    private List<T> told = List.of();
    private boolean updating;
    private boolean closing;

    /**
     * An empty table.
     *
     * @param id the table's id for tests, such as {@code table:ingredients}
     * @param key what identifies a row when its content has changed
     */
    public ListTable(Composite parent, String id, Function<T, String> key, List<Column<T>> columns) {
        super(parent, SWT.NONE);
        rows = new TableRows<>(key, columns);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        body = new Composite(this, SWT.NONE);
        body.setLayout(stack);
        body.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        table = new Table(body, SWT.VIRTUAL | SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER);
        table.setHeaderVisible(true);
        CellIcons.sharpen(table);
        Spoken.id(table, id);
        table.addListener(SWT.Dispose, event -> closing = true);
        empty = new EmptyNote(body);
        unfound = new EmptyNote(body);
        columns.forEach(this::addColumn);
        listen();
        stack.topControl = table;
    }

    /** Calls back with the selected rows whenever they are others. */
    public ListTable<T> onSelect(Consumer<List<T>> listener) {
        onSelect = listener;
        return this;
    }

    /** Calls back when a row is opened. */
    public ListTable<T> onOpen(Consumer<T> listener) {
        onOpen = listener;
        return this;
    }

    /** Calls back when the selected rows should go. */
    public ListTable<T> onDelete(Consumer<List<T>> listener) {
        onDelete = listener;
        return this;
    }

    /** Puts a field above the table that leaves only the rows holding every word typed; its hint says what it finds. */
    public ListTable<T> findable(String hint) {
        Text text = new Text(this, SWT.SEARCH | SWT.ICON_CANCEL | SWT.SINGLE | SWT.BORDER);
        text.setMessage(hint);
        Spoken.name(text, hint);
        Spoken.id(text, table.getData("id") + ":find");
        text.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        text.moveAbove(body);
        text.addListener(SWT.Modify, event -> filter(text.getText()));
        text.addListener(SWT.KeyDown, this::leaveFinder);
        finder = Optional.of(text);
        unfound.offer("Clear what was typed", table.getData("id") + ":clear", () -> {
            text.setText("");
            text.setFocus();
        });
        return this;
    }

    /** What to say when there are no rows. */
    public ListTable<T> whenEmpty(String sentence) {
        empty.say(sentence);
        return this;
    }

    /** What to say when there are no rows, with a button for the first step; each call adds a button. */
    public ListTable<T> whenEmpty(String sentence, String step, Runnable run) {
        empty.offer(step, table.getData("id") + (empty.offers() == 0 ? ":first" : ":" + (empty.offers() + 1)), run);
        return whenEmpty(sentence);
    }

    /** Of the first steps offers only these, by what is on their buttons; all of them until this is called. */
    public ListTable<T> offerOnly(String... steps) {
        empty.offerOnly(List.of(steps));
        return this;
    }

    /** Shows these rows, keeping sort, filter, selection and scroll place. */
    public void setRows(List<T> newRows) {
        rows.set(newRows);
        show(selectedKeys());
    }

    /** The rows as shown: filtered and sorted. */
    public List<T> shown() {
        return rows.shown();
    }

    /** The selected rows. */
    public List<T> selection() {
        List<T> selected = new ArrayList<>();
        for (int index : table.getSelectionIndices()) {
            if (index < rows.shown().size()) {
                selected.add(rows.shown().get(index));
            }
        }
        return selected;
    }

    /** The first selected row. */
    public Optional<T> selected() {
        return selection().stream().findFirst();
    }

    /** Selects the row of that key and brings it into view, dropping a filter that hides it; unknown keys do nothing. */
    public void select(String key) {
        if (rows.indexOf(key) < 0 && rows.holds(key)) {
            finder.ifPresentOrElse(text -> text.setText(""), () -> filter(""));
        }
        int index = rows.indexOf(key);
        if (index >= 0) {
            table.setSelection(index);
            table.showSelection();
            tellSelection();
        }
    }

    /** Leaves only rows that hold every word of {@code text} in some column. */
    public void filter(String text) {
        Set<String> keys = selectedKeys();
        rows.filter(text);
        show(keys);
    }

    /** The native table, for ids, menus and tests. */
    public Table control() {
        return table;
    }

    @Override
    public boolean setFocus() {
        if (closing || table.isDisposed()) {
            return false;
        }
        if (rows.shown().isEmpty()) {
            return stack.topControl instanceof EmptyNote note && note.setFocus();
        }
        if (table.getSelectionCount() == 0) {
            table.setSelection(0);
            tellSelection();
        }
        return table.setFocus();
    }

    private void addColumn(Column<T> column) {
        TableColumn heading = new TableColumn(table, column.figures() ? SWT.RIGHT : SWT.LEFT);
        heading.setText(column.heading());
        heading.setMoveable(true);
        heading.addListener(SWT.Selection, event -> sort(heading, column));
    }

    private void sort(TableColumn heading, Column<T> column) {
        boolean down = heading == table.getSortColumn() && table.getSortDirection() == SWT.UP;
        Set<String> keys = selectedKeys();
        table.setSortColumn(heading);
        table.setSortDirection(down ? SWT.DOWN : SWT.UP);
        rows.sort(down ? column.order().reversed() : column.order());
        show(keys);
    }

    private void listen() {
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.Selection, event -> tellSelection());
        table.addListener(SWT.DefaultSelection, event -> selected().ifPresent(onOpen));
        table.addListener(SWT.KeyDown, this::key);
        widths = Optional.of(ColumnWidths.follow(table, rows.columns(), this::cell));
        CutOffTips.show(table);
    }

    private void fill(Event event) {
        TableItem item = (TableItem) event.item;
        int index = event.index;
        if (index < 0 || index >= rows.shown().size()) {
            return;
        }
        T row = rows.shown().get(index);
        for (int at = 0; at < rows.columns().size(); at++) {
            Column<T> column = rows.columns().get(at);
            Tone tone = column.tone().apply(row);
            String icon = column.icon().apply(row);
            item.setText(at, column.text().apply(row));
            CellIcons.set(item, at, icon.isEmpty() ? null : Icons.small(table, icon, tone));
            item.setForeground(at, tone == Tone.PLAIN ? null : Palette.of(table).text(tone));
        }
    }

    /** What takes room in a cell; an icon takes as much as three letters. */
    private String cell(int index, int at) {
        T row = rows.shown().get(index);
        Column<T> column = rows.columns().get(at);
        String text = column.text().apply(row);
        return column.hasIcons() ? "mmm" + text : text;
    }

    private void key(Event event) {
        boolean command = (event.stateMask & SWT.MODIFIER_MASK) == SWT.MOD1;
        if (event.keyCode == SWT.DEL && !selection().isEmpty()) {
            onDelete.accept(selection());
        } else if (command && event.keyCode == 'c') {
            Clip.copy(table, rows.asText(selection()));
        } else if (command && event.keyCode == 'a') {
            table.selectAll();
            tellSelection();
        } else if (event.character > ' ' && event.character != SWT.DEL && (event.stateMask & ~SWT.SHIFT) == 0) {
            event.doit = !finder.map(text -> typeInto(text, event.character)).orElse(false);
        }
    }

    private static boolean typeInto(Text text, char first) {
        text.setFocus();
        text.setText(String.valueOf(first));
        text.setSelection(1);
        return true;
    }

    private void leaveFinder(Event event) {
        if (event.keyCode == SWT.ARROW_DOWN || event.character == SWT.CR) {
            setFocus();
            event.doit = false;
        } else if (event.character == SWT.ESC) {
            finder.ifPresent(text -> text.setText(""));
        }
    }

    private Set<String> selectedKeys() {
        Set<String> keys = new LinkedHashSet<>();
        told.forEach(row -> keys.add(rows.key(row)));
        return keys;
    }

    private void show(Set<String> keys) {
        updating = true;
        int top = table.getTopIndex();
        table.deselectAll();
        table.setItemCount(rows.shown().size());
        table.clearAll();
        int[] indices = rows.indicesOf(keys);
        table.setSelection(indices);
        if (top > 0) {
            table.setTopIndex(Math.max(0, Math.min(top, rows.shown().size() - 1)));
        }
        updating = false;
        widths.ifPresent(ColumnWidths::share);
        showEmptyOrTable();
        tellSelection();
    }

    private void showEmptyOrTable() {
        String typed = finder.map(text -> text.getText().strip()).orElse("");
        boolean nothing = !rows.hasNone() && rows.shown().isEmpty() && !typed.isEmpty();
        unfound.say(nothing ? "Nothing here has \u201c" + typed + "\u201d." : "");
        stack.topControl = nothing ? unfound : rows.hasNone() && empty.speaks() ? empty : table;
        body.layout();
    }

    private void tellSelection() {
        List<T> selected = selection();
        if (!updating && !selected.equals(told)) {
            told = List.copyOf(selected);
            onSelect.accept(told);
        }
    }
}
