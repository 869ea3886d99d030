package etamine.widgets;

import etamine.base.Subscription;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/**
 * A line of text that stands for a value. What cannot be read stays as typed, and a sentence below the field says why;
 * the sentence comes when the person pauses or leaves, never in the middle of a word.
 *
 * @param <V> the value
 */
public abstract class EntryField<V> extends Composite {
    private static final int PAUSE = 700;
    private final List<Consumer<Optional<V>>> listeners = new ArrayList<>();
    private final Text text;
    private final Label sentence;
    private Optional<V> value = Optional.empty();
    private Optional<String> problem = Optional.empty();
    private boolean required;
    private int edits;

    /** A field whose empty text shows {@code hint}. */
    protected EntryField(Composite parent, String hint) {
        super(parent, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 2;
        setLayout(layout);
        text = new Text(this, SWT.BORDER | SWT.SINGLE);
        text.setMessage(hint);
        text.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        sentence = new Label(this, SWT.WRAP);
        sentence.setFont(Fonts.small(this));
        sentence.setLayoutData(hidden());
        text.addListener(SWT.Modify, event -> modified());
        text.addListener(SWT.FocusOut, event -> showProblem());
    }

    /**
     * Reads what was typed.
     *
     * @param typed not blank
     * @throws IllegalArgumentException with a sentence that says what to do
     */
    protected abstract V read(String typed);

    /** The text that {@link #read} turns into this value again. */
    protected abstract String write(V value);

    /** The value; empty if nothing is typed or it cannot be read. */
    public Optional<V> value() {
        return value;
    }

    /** Why there is no value although there should be. */
    public Optional<String> problem() {
        return problem;
    }

    /** Shows a value, telling listeners if it is another one. */
    public void set(V newValue) {
        setText(write(newValue));
    }

    /** Shows a value, or nothing. */
    public void set(Optional<V> newValue) {
        setText(newValue.map(this::write).orElse(""));
    }

    /** Puts text as if it had been typed. */
    public void setText(String typed) {
        if (!text.getText().equals(typed)) {
            text.setText(typed);
            showProblem();
        }
    }

    /** What is typed. */
    public String text() {
        return text.getText();
    }

    /** Makes an empty field a problem. */
    public EntryField<V> required() {
        required = true;
        parse();
        return this;
    }

    /** Calls {@code listener} after each change of the value, also when it can no longer be read. */
    public Subscription onChange(Consumer<Optional<V>> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** Shows the problem now, if there is one; answers whether the field is sound. */
    public boolean check() {
        showProblem();
        return problem.isEmpty();
    }

    /** The native field, for focus, ids and accessibility. */
    public Text control() {
        return text;
    }

    @Override
    public boolean setFocus() {
        return !text.isDisposed() && text.setFocus();
    }

    @Override
    public void setEnabled(boolean enabled) {
        super.setEnabled(enabled);
        text.setEnabled(enabled);
    }

    @Override
    public void setToolTipText(String tip) {
        text.setToolTipText(tip);
    }

    private void modified() {
        Optional<V> before = value;
        Optional<String> problemBefore = problem;
        parse();
        if (problem.isEmpty()) {
            showProblem();
        } else {
            showLater();
        }
        if (!before.equals(value) || !problemBefore.equals(problem)) {
            List.copyOf(listeners).forEach(listener -> listener.accept(value));
        }
    }

    private void showLater() {
        int edit = ++edits;
        getDisplay().timerExec(PAUSE, () -> {
            if (!isDisposed() && edit == edits) {
                showProblem();
            }
        });
    }

    private void parse() {
        value = Optional.empty();
        problem = Optional.empty();
        String typed = text.getText().strip();
        if (typed.isEmpty()) {
            problem = required ? Optional.of("Fill this in.") : Optional.empty();
            return;
        }
        try {
            value = Optional.of(read(typed));
        } catch (IllegalArgumentException unreadable) {
            problem = Optional.of(String.valueOf(unreadable.getMessage()));
        }
    }

    private void showProblem() {
        if (isDisposed() || sentence.getText().equals(problem.orElse(""))) {
            return;
        }
        sentence.setText(problem.orElse(""));
        sentence.setForeground(Palette.of(this).text(Tone.BAD));
        sentence.setLayoutData(problem.isPresent() ? new GridData(SWT.FILL, SWT.TOP, true, false) : hidden());
        sentence.setVisible(problem.isPresent());
        requestLayout();
        FormPane.reflow(this);
    }

    private static GridData hidden() {
        GridData data = new GridData();
        data.exclude = true;
        return data;
    }
}
