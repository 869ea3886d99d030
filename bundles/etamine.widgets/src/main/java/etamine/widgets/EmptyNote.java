package etamine.widgets;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
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

    /** Leaves only the steps of these labels in view. */
    void offerOnly(Collection<String> steps) {
        for (Button button : buttons()) {
            boolean wanted = steps.contains(button.getText());
            button.setVisible(wanted);
            ((GridData) button.getLayoutData()).exclude = !wanted;
        }
        layout();
    }

    private List<Button> buttons() {
        return Stream.of(getChildren())
                .filter(Button.class::isInstance)
                .map(Button.class::cast)
                .toList();
    }

    /** How many steps there are. */
    int offers() {
        return buttons().size();
    }

    /** Whether there is something to say. */
    boolean speaks() {
        return !sentence.getText().isEmpty();
    }
}
