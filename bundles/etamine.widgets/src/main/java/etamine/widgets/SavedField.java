package etamine.widgets;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.widgets.Text;

/**
 * A line or area of a form that is saved when it is left. What cannot be saved stays as typed under a sentence, also
 * when another thing is shown in between; Escape puts back what was there.
 */
public final class SavedField {
    private final FormPane form;
    private final Text text;
    private final BiFunction<String, String, Optional<String>> save;
    private final Map<String, String> drafts = new HashMap<>();
    private String subject = "";
    private String shown = "";

    /**
     * Follows a text of a form.
     *
     * @param save gets what the text is about and what was typed; answers what is wrong with it, if anything
     */
    public SavedField(FormPane form, Text text, BiFunction<String, String, Optional<String>> save) {
        this.form = form;
        this.text = text;
        this.save = save;
        text.addListener(SWT.FocusOut, event -> leave());
        text.addListener(SWT.DefaultSelection, event -> leave());
        text.addKeyListener(KeyListener.keyPressedAdapter(this::escape));
    }

    /** Shows a text about some subject, unless something else is being typed about it. */
    public void show(String about, String value) {
        boolean same = about.equals(subject);
        if (!same) {
            leave();
        }
        boolean typing = same && isEdited();
        subject = about;
        shown = value;
        if (typing && drafts.containsKey(about) && !text.isFocusControl()) {
            return;
        }
        if (!typing) {
            put(drafts.getOrDefault(about, value));
            form.problem(text, "");
            if (drafts.containsKey(about)) {
                leave();
            }
        }
    }

    /** Saves what was typed, if it is other than what was shown. */
    public void leave() {
        if (text.isDisposed() || subject.isEmpty()) {
            return;
        }
        if (!isEdited()) {
            drafts.remove(subject);
            form.problem(text, "");
            return;
        }
        Optional<String> problem = save.apply(subject, text.getText());
        form.problem(text, problem.orElse(""));
        if (problem.isPresent()) {
            drafts.put(subject, text.getText());
        } else {
            drafts.remove(subject);
            shown = text.getText();
        }
    }

    private boolean isEdited() {
        return !text.getText().equals(shown);
    }

    private void put(String value) {
        if (!text.getText().equals(value)) {
            text.setText(value);
        }
    }

    private void escape(KeyEvent event) {
        if (event.character == SWT.ESC && isEdited()) {
            drafts.remove(subject);
            put(shown);
            form.problem(text, "");
            event.doit = false;
        }
    }
}
