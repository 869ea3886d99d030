package etamine.shell.app.internal;

import etamine.widgets.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** How the window's parts lie beside each other. */
final class Layouts {
    private Layouts() {}

    /** A grid without margins or gaps. */
    static GridLayout plain(int columns) {
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 0;
        layout.verticalSpacing = 0;
        return layout;
    }

    /** A thin dividing line across. */
    static void line(Composite parent) {
        Label line = new Label(parent, SWT.NONE);
        line.setBackground(Palette.of(parent).line());
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.heightHint = 1;
        line.setLayoutData(data);
    }
}
