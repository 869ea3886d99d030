package etamine.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What stands in place of a table without rows: a sentence and perhaps the first step. */
final class EmptyNote extends Composite {
    private final Label sentence;

    EmptyNote(Composite parent) {
        super(parent, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginTop = 48;
        layout.verticalSpacing = 12;
        setLayout(layout);
        sentence = new Label(this, SWT.WRAP | SWT.CENTER);
        sentence.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        sentence.setForeground(Palette.of(this).quiet());
    }

    void say(String text) {
        sentence.setText(text);
    }

    void offer(String step, String id, Runnable run) {
        Button button = Spoken.id(new Button(this, SWT.PUSH), id);
        button.setText(step);
        button.setLayoutData(new GridData(SWT.CENTER, SWT.TOP, true, false));
        button.addListener(SWT.Selection, event -> run.run());
    }

    /** How many steps are offered. */
    int offers() {
        return getChildren().length - 1;
    }

    /** Whether there is something to say. */
    boolean speaks() {
        return !sentence.getText().isEmpty();
    }
}
