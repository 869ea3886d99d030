package etamine.widgets;

import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;

/** Puts text on the clipboard. */
public final class Clip {
    private Clip() {}

    /** Copies {@code text}; nothing happens when it is empty. */
    public static void copy(Control control, String text) {
        if (text.isEmpty()) {
            return;
        }
        Clipboard clipboard = new Clipboard(control.getDisplay());
        try {
            clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        } finally {
            clipboard.dispose();
        }
    }
}
