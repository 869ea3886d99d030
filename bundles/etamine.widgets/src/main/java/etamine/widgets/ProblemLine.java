package etamine.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** The line below a control that says what is wrong with it. */
final class ProblemLine {
    private static final String KEY = "etamine.problem";

    private ProblemLine() {}

    /** Says it; answers whether that is something new. */
    static boolean below(Control control, String sentence) {
        boolean known = control.getData(KEY) instanceof Label label && !label.isDisposed();
        if (known ? ((Label) control.getData(KEY)).getText().equals(sentence) : sentence.isEmpty()) {
            return false;
        }
        Label line = known ? (Label) control.getData(KEY) : make(control);
        line.setText(sentence);
        line.setVisible(!sentence.isEmpty());
        ((GridData) line.getLayoutData()).exclude = sentence.isEmpty();
        line.requestLayout();
        return true;
    }

    private static Label make(Control control) {
        Label line = new Label(control.getParent(), SWT.WRAP);
        line.setFont(Fonts.small(control));
        line.setForeground(Palette.of(control).text(Tone.BAD));
        line.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        line.moveBelow(control);
        control.setData(KEY, line);
        return line;
    }
}
