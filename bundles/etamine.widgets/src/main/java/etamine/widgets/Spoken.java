package etamine.widgets;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Names for screen readers, and ids by which tests find a control. */
public final class Spoken {
    private static final String ID = "id";

    private Spoken() {}

    /** Gives a control the name a screen reader says. */
    public static void name(Control control, String name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name;
            }
        });
    }

    /** Says that a label belongs to a control. */
    public static void label(Control control, Label label) {
        name(control, label.getText().replace("&", ""));
        control.getAccessible().addRelation(ACC.RELATION_LABELLED_BY, label.getAccessible());
        label.getAccessible().addRelation(ACC.RELATION_LABEL_FOR, control.getAccessible());
    }

    /** Gives a control an id, such as {@code field:name} or {@code action:add}. */
    public static <C extends Control> C id(C control, String id) {
        control.setData(ID, id);
        return control;
    }
}
