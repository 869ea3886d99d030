package etamine.inventory.ui.internal;

import etamine.widgets.Fonts;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/**
 * The sheet to count on: one text a line. Enter and the down arrow go to the next, the up arrow back; nothing needs the
 * mouse.
 */
final class CountSheet {
    private static final int ENTRY_WIDTH = 160;

    private final ScrolledComposite scroller;
    private final CountModel model;
    private final Runnable changed;
    private final List<Text> texts = new ArrayList<>();

    CountSheet(Composite parent, CountModel model, Runnable changed) {
        this.model = model;
        this.changed = changed;
        scroller = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        scroller.setShowFocusedControl(true);
        parent.setLayout(new FillLayout());
        show();
    }

    /** Shows the lines of the model. */
    void show() {
        texts.clear();
        Optional.ofNullable(scroller.getContent()).ifPresent(old -> old.dispose());
        Composite sheet = new Composite(scroller, SWT.NONE);
        GridLayout layout = new GridLayout(4, false);
        layout.marginWidth = 12;
        layout.horizontalSpacing = 16;
        layout.verticalSpacing = 2;
        sheet.setLayout(layout);
        heading(sheet, "Item");
        heading(sheet, "By the ledger");
        heading(sheet, "Counted");
        heading(sheet, "");
        model.lines().forEach(line -> line(sheet, line));
        scroller.setContent(sheet);
        scroller.setMinSize(sheet.computeSize(SWT.DEFAULT, SWT.DEFAULT));
        scroller.getParent().layout(true, true);
    }

    private static void heading(Composite sheet, String text) {
        Label label = new Label(sheet, SWT.NONE);
        label.setText(text);
        label.setFont(Fonts.small(sheet));
        label.setForeground(Palette.of(sheet).quiet());
    }

    private void line(Composite sheet, CountModel.Line line) {
        Label name = new Label(sheet, SWT.NONE);
        name.setText(line.name());
        Label expected = new Label(sheet, SWT.RIGHT);
        expected.setText(line.expected());
        expected.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
        Text text = Spoken.id(new Text(sheet, SWT.BORDER | SWT.SINGLE), "count:" + line.item());
        text.setText(line.typed());
        GridData width = new GridData(SWT.LEFT, SWT.CENTER, false, false);
        width.widthHint = ENTRY_WIDTH;
        text.setLayoutData(width);
        Spoken.name(text, line.name() + ", counted; by the ledger " + line.expected());
        Label problem = new Label(sheet, SWT.NONE);
        problem.setForeground(Palette.of(sheet).text(Tone.BAD));
        problem.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        text.addListener(SWT.Modify, event -> {
            model.type(line.item(), text.getText());
            problem.setText("");
            changed.run();
        });
        text.addListener(
                SWT.FocusOut,
                event -> problem.setText(model.type(line.item(), text.getText()).orElse("")));
        text.addKeyListener(KeyListener.keyPressedAdapter(event -> walk(text, event)));
        texts.add(text);
    }

    private void walk(Text from, KeyEvent event) {
        int step = switch (event.keyCode) {
            case SWT.CR, SWT.KEYPAD_CR, SWT.ARROW_DOWN -> 1;
            case SWT.ARROW_UP -> -1;
            default -> 0;
        };
        int next = texts.indexOf(from) + step;
        if (step != 0 && next >= 0 && next < texts.size()) {
            texts.get(next).setFocus();
            texts.get(next).selectAll();
        }
        event.doit = step == 0;
    }

    /** Puts the keyboard in the line of an item, or in the first. */
    void focus(Optional<String> item) {
        List<String> ids = model.lines().stream().map(CountModel.Line::item).toList();
        int index = Math.max(0, item.map(ids::indexOf).orElse(0));
        if (index < texts.size()) {
            texts.get(index).setFocus();
            texts.get(index).selectAll();
        }
    }

    void dispose() {
        scroller.dispose();
    }
}
