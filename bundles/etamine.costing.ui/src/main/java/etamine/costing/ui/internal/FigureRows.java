package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.widgets.Fonts;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** A few figures one below the other: name and figure, the remark as a tip. */
final class FigureRows extends Composite {
    FigureRows(Composite parent) {
        super(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 2;
        layout.horizontalSpacing = 10;
        layout.verticalSpacing = 3;
        setLayout(layout);
    }

    /** Shows these, keeping the labels that are there. */
    void show(List<Explanation> rows) {
        Control[] labels = getChildren();
        for (int at = rows.size() * 2; at < labels.length; at++) {
            labels[at].dispose();
        }
        for (int at = labels.length; at < rows.size() * 2; at++) {
            make(at % 2);
        }
        labels = getChildren();
        for (int at = 0; at < rows.size(); at++) {
            put(labels[at * 2], rows.get(at).title());
            put(labels[at * 2 + 1], rows.get(at).value());
            labels[at * 2].setToolTipText(rows.get(at).source());
        }
        layout(true);
    }

    private void make(int column) {
        Label label = new Label(this, column == 1 ? SWT.RIGHT : SWT.NONE);
        label.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
        if (column == 1) {
            label.setFont(Fonts.bold(this));
        }
    }

    private static void put(Control control, String text) {
        if (control instanceof Label label && !label.getText().equals(text)) {
            label.setText(text.replace("&", "&&"));
        }
    }
}
