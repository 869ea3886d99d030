package etamine.widgets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** One row of an {@link EditGrid}. */
final class GridRow {
    private static final String CHARACTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ, \b";
    private final EditGrid grid;
    private final List<Text> entries = new ArrayList<>();
    private final List<Control> controls = new ArrayList<>();
    private final List<Label> figures = new ArrayList<>();
    private final Label sentence;
    private final Button remove;
    private List<String> shown = List.of();
    private boolean said;

    GridRow(EditGrid grid, int place) {
        this.grid = grid;
        for (int column = 0; column < grid.columns().size(); column++) {
            GridColumn about = grid.columns().get(column);
            if (about.below()) {
                continue;
            }
            controls.add(about.editable() ? entry(about, grid.cellId(place, column)) : figure());
        }
        remove = remove();
        controls.add(remove);
        for (int column = 0; column < grid.columns().size(); column++) {
            GridColumn about = grid.columns().get(column);
            if (about.below()) {
                Text entry = entry(about, grid.cellId(place, column));
                entry.setMessage(about.hint().isEmpty() ? about.heading() : about.hint());
                entry.setToolTipText(about.heading());
                controls.add(entry);
            }
        }
        sentence = new Label(grid, SWT.WRAP);
        sentence.setFont(Fonts.small(grid));
        sentence.setForeground(Palette.of(grid).text(Tone.BAD));
        controls.add(sentence);
        shown = entries.stream().map(text -> "").toList();
        problem("");
        offerRemoval();
    }

    private Text entry(GridColumn column, String id) {
        Text text = new Text(grid, SWT.BORDER | SWT.SINGLE);
        Spoken.name(text, column.heading());
        Spoken.id(text, id);
        text.setMessage(column.hint());
        text.addListener(SWT.FocusIn, event -> grid.entered(this));
        text.addListener(SWT.FocusOut, event -> {
            text.setSelection(0); // what is too long for its field shows its beginning
            leaveLater();
        });
        text.addListener(SWT.DefaultSelection, event -> enter());
        text.addListener(SWT.Modify, event -> offerRemoval());
        text.addListener(SWT.KeyDown, this::escape);
        text.addListener(SWT.KeyDown, this::move);
        text.addListener(SWT.Traverse, this::tab);
        text.addListener(SWT.MouseVerticalWheel, grid::wheel);
        TypeAhead proposals = TypeAhead.on(
                text,
                (typed, position) -> column.complete().apply(typed).stream()
                        .map(ContentProposal::new)
                        .toArray(IContentProposal[]::new),
                CHARACTERS);
        proposals.setAutoActivationDelay(120);
        text.addListener(SWT.Resize, event -> proposals.room(Math.max(260, text.getSize().x), 180));
        entries.add(text);
        return text;
    }

    private Label figure() {
        Label label = new Label(grid, SWT.RIGHT);
        figures.add(label);
        return label;
    }

    private Button remove() {
        Button button = new Button(grid, SWT.PUSH | SWT.FLAT);
        button.setImage(Icons.small(grid, "remove"));
        button.setToolTipText("Remove this line");
        Spoken.name(button, "Remove this line");
        button.addListener(SWT.Selection, event -> {
            entries.forEach(text -> text.setText(""));
            leave();
        });
        return button;
    }

    private void offerRemoval() {
        boolean blank = cells().stream().allMatch(String::isEmpty);
        remove.setVisible(!blank);
    }

    /** What Tab goes through: the cells, then the button. */
    List<Control> tabs() {
        List<Control> order = new ArrayList<>(entries);
        order.add(remove);
        return order;
    }

    void show(List<String> texts) {
        List<String> values = new ArrayList<>();
        int figure = 0;
        for (int column = 0; column < grid.columns().size(); column++) {
            if (grid.columns().get(column).editable()) {
                values.add(texts.get(column));
            } else {
                figures.get(figure++).setText(texts.get(column));
            }
        }
        boolean edited = isEdited();
        shown = values;
        if (!edited) {
            type(values);
            problem("");
        }
    }

    void type(List<String> cells) {
        for (int i = 0; i < entries.size(); i++) {
            if (!entries.get(i).getText().equals(cells.get(i))) {
                entries.get(i).setText(cells.get(i));
            }
        }
        if (isEdited()) {
            leave();
        }
    }

    /** Makes what is typed count as shown, once it is kept elsewhere. */
    void forget() {
        shown = cells();
        problem("");
    }

    List<String> cells() {
        return entries.stream().map(text -> text.getText().strip()).toList();
    }

    boolean isEdited() {
        return !cells().equals(shown);
    }

    /** Puts the keyboard here; while the grid is being taken down there is nowhere to put it. */
    boolean focus() {
        return !entries.get(0).isDisposed() && entries.get(0).setFocus();
    }

    boolean focusLast() {
        Text last = entries.get(entries.size() - 1);
        return !last.isDisposed() && last.setFocus();
    }

    boolean isFocused() {
        return entries.stream().anyMatch(Text::isFocusControl);
    }

    void leave() {
        if (entries.get(0).isDisposed() || !isEdited()) {
            return;
        }
        List<String> cells = cells();
        Optional<String> wrong = grid.save(this, cells);
        if (wrong.isEmpty() && !entries.get(0).isDisposed()) {
            shown = cells;
        }
        problem(wrong.orElse(""));
    }

    private void enter() {
        boolean blank = cells().stream().allMatch(String::isEmpty);
        leave();
        if (!isEdited() && !blank) {
            grid.next(this);
        }
    }

    /** Moving between the cells of a row does not leave it. */
    private void leaveLater() {
        if (grid.isDisposed()) {
            return;
        }
        grid.getDisplay().asyncExec(() -> {
            boolean gone = grid.isDisposed() || entries.get(0).isDisposed();
            if (!gone && !isFocused()) {
                leave();
            }
        });
    }

    private void escape(Event event) {
        if (event.character == SWT.ESC && isEdited()) {
            for (int i = 0; i < entries.size(); i++) {
                entries.get(i).setText(shown.get(i));
            }
            problem("");
            event.doit = false;
        }
    }

    /** At the edge of the rows in view Tab brings the next one in rather than leaving the grid. */
    private void tab(Event event) {
        boolean on = event.detail == SWT.TRAVERSE_TAB_NEXT && event.widget == entries.get(entries.size() - 1);
        boolean back = event.detail == SWT.TRAVERSE_TAB_PREVIOUS && event.widget == entries.get(0);
        if (on && grid.tabOn(this, 1) || back && grid.tabOn(this, -1)) {
            event.doit = false;
        }
    }

    private void move(Event event) {
        boolean alt = (event.stateMask & SWT.MODIFIER_MASK) == SWT.ALT;
        if (alt && (event.keyCode == SWT.ARROW_UP || event.keyCode == SWT.ARROW_DOWN)) {
            leave();
            if (!isEdited()) {
                grid.move(this, event.keyCode == SWT.ARROW_UP ? -1 : 1);
            }
            event.doit = false;
        }
    }

    private void problem(String text) {
        if (sentence.isDisposed() || said && sentence.getText().equals(text)) {
            return;
        }
        said = true;
        sentence.setText(text);
        sentence.setVisible(!text.isEmpty());
        sentence.requestLayout();
        FormPane.reflow(grid);
    }

    void dispose() {
        controls.forEach(Control::dispose);
    }
}
