package etamine.costing.ui.internal;

import etamine.base.Subject;
import etamine.shell.BenchAction;
import java.util.List;
import org.eclipse.swt.widgets.Control;

/** One page of the costing bench. */
interface CostPage {

    /** Its one widget. */
    Control control();

    /** What can be done on it now. */
    List<BenchAction> actions();

    /** Reads the book again; also called when the page comes up. */
    void refresh();

    /** Shows one thing, where this page can. */
    default void show(Subject subject) {}

    /** Puts the keyboard where work starts. */
    void focus();
}
