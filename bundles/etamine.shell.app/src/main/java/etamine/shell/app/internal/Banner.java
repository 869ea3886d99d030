package etamine.shell.app.internal;

import etamine.widgets.Icons;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A line across the window that says why nothing can be changed; not there when there is no reason. */
final class Banner extends Composite {
    private final Label text;

    Banner(Composite parent) {
        super(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        setLayout(layout);
        setBackground(Palette.of(this).warnWash());
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        Label icon = new Label(this, SWT.NONE);
        Dressing.of(icon, () -> icon.setImage(Icons.small(this, "warning", Tone.WARN)));
        text = Spoken.id(new Label(this, SWT.WRAP), "banner");
        text.setForeground(Palette.of(this).ink());
        text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        setVisible(false);
    }

    @Override
    public void setLayoutData(Object data) {
        ((GridData) data).exclude = !getVisible();
        super.setLayoutData(data);
    }

    /** Shows the reason, or goes away. */
    void show(Optional<String> reason) {
        text.setText(reason.map(why -> "This book can be read but not changed. " + why)
                .orElse(""));
        setVisible(reason.isPresent());
        ((GridData) getLayoutData()).exclude = reason.isEmpty();
        requestLayout();
    }
}
