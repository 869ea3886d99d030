package etamine.widgets;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/**
 * A small form to fill in. Enter accepts, Escape leaves. It stays open, with a sentence, until its fields and its check
 * are content; what was accepted is read in {@link #onAccept} while the fields still exist.
 */
public final class FormDialog extends Dialog {
    private static final int WIDTH = 520;
    private static final int ROOM = 24; // for a field's problem that is not there yet
    private final String title;
    private final Consumer<FormPane> content;
    private Supplier<Optional<String>> check = Optional::empty;
    private Runnable accept = () -> {};
    private String acceptLabel = "OK";
    private boolean closeOnly;
    private Optional<FormPane> form = Optional.empty();
    private Optional<Label> sentence = Optional.empty();

    /** A dialog whose form {@code content} fills. */
    public FormDialog(Shell parent, String title, Consumer<FormPane> content) {
        super(parent);
        this.title = title;
        this.content = content;
        setShellStyle(SWT.DIALOG_TRIM | SWT.RESIZE | SWT.APPLICATION_MODAL);
    }

    /** Names the button that accepts by what it does, such as {@code Receive}. */
    public FormDialog button(String label) {
        acceptLabel = label;
        return this;
    }

    /** Makes it something to look at, with a single button that closes it. */
    public FormDialog closeOnly() {
        acceptLabel = "Close";
        closeOnly = true;
        return this;
    }

    /** Asked when accepting, after the fields' own checks; a sentence keeps the dialog open. */
    public FormDialog check(Supplier<Optional<String>> problem) {
        check = problem;
        return this;
    }

    /** Runs when the form is accepted, before it closes. */
    public FormDialog onAccept(Runnable run) {
        accept = run;
        return this;
    }

    /** Shows the dialog and waits; answers whether it was accepted. */
    public boolean ask() {
        return open() == OK;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
        Spoken.id(shell, "dialog");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        FormPane pane = new FormPane(parent);
        pane.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        content.accept(pane);
        selectFirst(pane);
        form = Optional.of(pane);
        Label line = new Label(parent, SWT.WRAP);
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.horizontalIndent = 12;
        data.widthHint = WIDTH - 40;
        line.setLayoutData(data);
        line.setForeground(Palette.of(line).text(Tone.BAD));
        Spoken.id(line, "dialog:problem");
        sentence = Optional.of(line);
        return pane;
    }

    /** What is proposed in the first line is selected, so that typing replaces it. */
    private static boolean selectFirst(Composite in) {
        for (Control child : in.getChildren()) {
            if (child instanceof Text text) {
                text.selectAll();
                return true;
            }
            if (child instanceof Combo || child instanceof Composite part && selectFirst(part)) {
                return true;
            }
        }
        return false;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        Spoken.id(createButton(parent, IDialogConstants.OK_ID, acceptLabel, true), "dialog:ok");
        if (!closeOnly) {
            Spoken.id(createButton(parent, IDialogConstants.CANCEL_ID, "Cancel", false), "dialog:cancel");
        }
    }

    @Override
    protected Point getInitialSize() {
        Point size = getShell().computeSize(WIDTH, SWT.DEFAULT, true);
        int most = getShell().getMonitor().getClientArea().height * 4 / 5;
        return new Point(Math.max(WIDTH, Math.min(size.x, WIDTH * 2)), Math.min(size.y + ROOM, most));
    }

    @Override
    protected void okPressed() {
        if (!form.map(FormPane::check).orElse(true)) {
            return;
        }
        Optional<String> problem = check.get();
        sentence.ifPresent(line -> {
            line.setText(problem.orElse(""));
            line.requestLayout();
        });
        if (problem.isEmpty()) {
            accept.run();
            super.okPressed();
        }
    }
}
