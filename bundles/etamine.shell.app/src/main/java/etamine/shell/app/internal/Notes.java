package etamine.shell.app.internal;

import etamine.widgets.Fonts;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A few words in place of a bench. */
final class Notes {
    private static final int WIDTH = 460;

    private Notes() {}

    static Composite build(Composite parent, String heading, String text) {
        Composite note = Spoken.id(new Composite(parent, SWT.NONE), "note");
        GridLayout layout = new GridLayout();
        layout.marginTop = 72;
        layout.verticalSpacing = 10;
        note.setLayout(layout);
        Label head = new Label(note, SWT.CENTER);
        head.setText(heading);
        head.setFont(Fonts.heading(note));
        head.setLayoutData(new GridData(SWT.CENTER, SWT.TOP, true, false));
        Label body = Spoken.id(new Label(note, SWT.WRAP | SWT.CENTER), "note:text");
        body.setText(text.replace("&", "&&"));
        body.setForeground(Palette.of(note).quiet());
        GridData data = new GridData(SWT.CENTER, SWT.TOP, true, false);
        data.widthHint = WIDTH;
        body.setLayoutData(data);
        return note;
    }

    static Button button(Composite note, String label, String id, Runnable run) {
        Button button = Spoken.id(new Button(note, SWT.PUSH), id);
        button.setText(label);
        GridData data = new GridData(SWT.CENTER, SWT.TOP, true, false);
        data.minimumWidth = 220;
        data.widthHint = 220;
        button.setLayoutData(data);
        button.addListener(SWT.Selection, event -> run.run());
        return button;
    }
}
