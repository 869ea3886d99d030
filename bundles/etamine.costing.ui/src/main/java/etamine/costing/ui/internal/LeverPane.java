package etamine.costing.ui.internal;

import etamine.widgets.Icons;
import etamine.widgets.NumberField;
import etamine.widgets.Palette;
import etamine.widgets.SliderRow;
import etamine.widgets.Spoken;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** The levers that are out, one below the other, each with what its value means. */
final class LeverPane extends Composite {
    private static final String LEAST = "-100";
    private static final String MOST = "10000000";
    private static final int PLACES = 6;
    private final WhatIfModel model;
    private final Runnable moved;
    private final ScrolledComposite scroll;
    private final Composite body;
    private final Map<String, SliderRow> rows = new LinkedHashMap<>();

    LeverPane(Composite parent, WhatIfModel model, Runnable moved) {
        super(parent, SWT.NONE);
        this.model = model;
        this.moved = moved;
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        scroll = new ScrolledComposite(this, SWT.V_SCROLL);
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setShowFocusedControl(true);
        body = new Composite(scroll, SWT.NONE);
        GridLayout lines = new GridLayout(2, false);
        lines.marginWidth = 0;
        lines.verticalSpacing = 0;
        body.setLayout(lines);
        scroll.setContent(body);
        scroll.addListener(SWT.Resize, event -> reflow());
    }

    /** Shows the levers as the model has them. */
    void show() {
        for (Control child : body.getChildren()) {
            child.dispose();
        }
        rows.clear();
        List<Lever> out = model.out();
        out.forEach(this::add);
        if (out.isEmpty()) {
            hint();
        }
        reflow();
    }

    void focus(String id) {
        Optional.ofNullable(rows.get(id)).ifPresent(SliderRow::setFocus);
    }

    private void add(Lever lever) {
        SliderRow row = new SliderRow(body, "lever:" + lever.id(), p -> new NumberField(p, LEAST, MOST, PLACES))
                .named(lever.name(), lever.unit())
                .range(lever.range());
        row.show(model.value(lever.id()));
        row.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        Button away = Spoken.id(new Button(body, SWT.PUSH | SWT.FLAT), "lever:" + lever.id() + ":remove");
        away.setImage(Icons.small(away, "close"));
        away.setToolTipText("Do not try this");
        Spoken.name(away, "Do not try this");
        row.note(lever.said().apply(row.value()));
        row.onChange(value -> {
            model.move(lever.id(), value);
            row.note(lever.said().apply(value));
            moved.run();
        });
        away.addListener(SWT.Selection, event -> {
            model.remove(lever.id());
            getDisplay().asyncExec(() -> {
                if (!isDisposed()) {
                    show();
                    moved.run();
                }
            });
        });
        rows.put(lever.id(), row);
    }

    private void hint() {
        Label hint = new Label(body, SWT.WRAP);
        hint.setText("Choose above what to try. Each thing gets a slider and a field for an exact figure; the menu"
                + " below follows every step.");
        hint.setForeground(Palette.of(body).quiet());
        hint.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
    }

    private void reflow() {
        int width = Math.max(60, scroll.getClientArea().width);
        scroll.setMinHeight(body.computeSize(width, SWT.DEFAULT).y);
        body.layout(true, true);
    }
}
