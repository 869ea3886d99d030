package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.widgets.Fonts;
import etamine.widgets.Palette;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** A few figures one below the other: name, figure, remark. */
final class FigureRows extends Composite {
    FigureRows(Composite parent) {
        super(parent, SWT.NONE);
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 0;
        layout.marginHeight = 2;
        layout.horizontalSpacing = 10;
        layout.verticalSpacing = 3;
        setLayout(layout);
    }

    /** Shows these, keeping the labels that are there. */
    void show(List<Explanation> rows) {
        Control[] labels = getChildren();
        for (int at = rows.size() * 3; at < labels.length; at++) {
            labels[at].dispose();
        }
        for (int at = labels.length; at < rows.size() * 3; at++) {
            make(at % 3);
        }
        labels = getChildren();
        for (int at = 0; at < rows.size(); at++) {
            put(labels[at * 3], rows.get(at).title());
            put(labels[at * 3 + 1], rows.get(at).value());
            put(labels[at * 3 + 2], rows.get(at).source());
        }
        layout(true);
    }

    private void make(int column) {
        Label label = new Label(this, column == 1 ? SWT.RIGHT : SWT.NONE);
        label.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, column == 2, false));
        if (column == 1) {
            label.setFont(Fonts.bold(this));
        } else {
            label.setForeground(
                    column == 2 ? Palette.of(this).quiet() : Palette.of(this).ink());
        }
    }

    private static void put(Control control, String text) {
        if (control instanceof Label label && !label.getText().equals(text)) {
            label.setText(text.replace("&", "&&"));
        }
    }
}
