package etamine.shell.app.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.widgets.Fonts;
import etamine.widgets.Icons;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

/** Explains what is selected: the figure, where it comes from, and the figures it was made from. */
final class Slate extends Composite {
    private static final String NOTHING = "Select a figure or a row: what it is made of stands here.";
    private final Consumer<Subject> open;
    private final Label title;
    private final Label value;
    private final Label source;
    private final StyledText parts;
    private final SlateText written;

    Slate(Composite parent, Consumer<Subject> open, Runnable close) {
        super(parent, SWT.NONE);
        this.open = open;
        setBackground(Palette.of(this).paper());
        setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        layout.marginHeight = 8;
        setLayout(layout);
        Label head = new Label(this, SWT.NONE);
        head.setText("The slate");
        head.setForeground(Palette.of(this).quiet());
        head.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        closeButton(close);
        title = line("slate:title");
        title.setFont(Fonts.bold(this));
        value = line("slate:value");
        value.setFont(Fonts.figure(this));
        source = line("slate:source");
        source.setForeground(Palette.of(this).quiet());
        parts = buildParts();
        written = new SlateText(parts);
        show(Optional.empty());
    }

    /** Shows an explanation, or a hint when nothing is selected. */
    void show(Optional<Explanation> explanation) {
        put(title, explanation.map(Explanation::title).orElse(""));
        put(value, explanation.map(Explanation::value).orElse(""));
        put(source, explanation.map(Explanation::source).orElse(NOTHING));
        written.show(explanation.map(Explanation::parts).orElse(List.of()));
        parts.setVisible(!written.isEmpty());
        layout(true);
    }

    @Override
    public boolean setFocus() {
        return !parts.isDisposed() && parts.isVisible() && parts.setFocus();
    }

    private void closeButton(Runnable close) {
        ToolBar bar = new ToolBar(this, SWT.FLAT);
        ToolItem item = new ToolItem(bar, SWT.PUSH);
        Dressing.of(bar, () -> {
            item.setImage(Icons.small(bar, "close"));
            bar.requestLayout();
        });
        item.setToolTipText("Close the slate (F9)");
        item.setData("id", "slate:close");
        item.addListener(SWT.Selection, event -> close.run());
        Spoken.name(bar, "Close the slate");
    }

    private Label line(String id) {
        Label label = Spoken.id(new Label(this, SWT.WRAP), id);
        label.setForeground(Palette.of(this).ink());
        label.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        return label;
    }

    private static void put(Label label, String text) {
        label.setText(Sentences.kept(text).replace("&", "&&"));
        ((GridData) label.getLayoutData()).exclude = text.isEmpty();
        label.setVisible(!text.isEmpty());
    }

    private StyledText buildParts() {
        StyledText made = Spoken.id(new StyledText(this, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL), "slate:parts");
        made.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1));
        made.setBackground(Palette.of(this).paper());
        made.setForeground(Palette.of(this).ink());
        made.setLineSpacing(3);
        Spoken.name(made, "What the selected figure is made of");
        made.addListener(SWT.Traverse, Slate::tabOut);
        made.addListener(SWT.KeyDown, this::key);
        made.addListener(SWT.MouseUp, this::click);
        made.addListener(SWT.MouseMove, this::point);
        return made;
    }

    private void key(Event event) {
        if (event.character == SWT.CR) {
            follow(parts.getLineAtOffset(parts.getCaretOffset()));
        }
    }

    private void click(Event event) {
        if (event.button == 1 && parts.getSelectionCount() == 0) {
            lineAt(event).ifPresent(this::follow);
        }
    }

    private void point(Event event) {
        boolean opens = lineAt(event).flatMap(written::subject).isPresent();
        parts.setCursor(opens ? getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
    }

    private Optional<Integer> lineAt(Event event) {
        int offset = parts.getOffsetAtPoint(new Point(event.x, event.y));
        return offset < 0 ? Optional.empty() : Optional.of(parts.getLineAtOffset(offset));
    }

    private void follow(int line) {
        written.subject(line).ifPresent(open);
    }

    private static void tabOut(Event event) {
        event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
    }
}
