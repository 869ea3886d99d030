package etamine.widgets;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Label;

/** A sentence in a label of a grid; while there is nothing to say it takes no room. */
public final class Sentence {
    private Sentence() {}

    /** Says it as it stands, an ampersand included; the caller lays out afterwards. */
    public static void say(Label label, String text) {
        label.setText(text.replace("&", "&&"));
        ((GridData) label.getLayoutData()).exclude = text.isEmpty();
        label.setVisible(!text.isEmpty());
    }
}
