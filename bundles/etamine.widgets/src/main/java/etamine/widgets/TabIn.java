package etamine.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Text;

/** Selects what stands in a line that Tab leads into, so that typing replaces it; a click leaves it as it is. */
final class TabIn {
    private final Composite form;

    private TabIn(Composite form) {
        this.form = form;
    }

    /** Follows Tab into the lines of text in a form. */
    static void follow(Composite form) {
        Listener keys = new TabIn(form)::traverse;
        form.getDisplay().addFilter(SWT.Traverse, keys);
        form.addListener(SWT.Dispose, event -> event.display.removeFilter(SWT.Traverse, keys));
    }

    private void traverse(Event event) {
        boolean tab = event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
        if (tab) {
            event.display.asyncExec(() -> arrived(event));
        }
    }

    private void arrived(Event event) {
        Control now = event.display.getFocusControl();
        boolean moved = !form.isDisposed() && now != null && now != event.widget;
        if (moved && now instanceof Text text && (text.getStyle() & SWT.SINGLE) != 0 && holds(text)) {
            text.selectAll();
        }
    }

    private boolean holds(Control control) {
        Control at = control;
        while (at != null && at != form) {
            at = at.getParent();
        }
        return at == form;
    }
}
