package etamine.costing.ui.internal;

import etamine.costing.Days;
import etamine.widgets.DayField;
import etamine.widgets.Spoken;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** From one day to another, with room beside it for other choices. */
final class PeriodBar extends Composite {
    private final DayField from;
    private final DayField to;
    private boolean filling;

    /**
     * Days that are read.
     *
     * @param more how many controls will stand beside the days
     */
    PeriodBar(Composite parent, Supplier<LocalDate> today, int more, Consumer<Days> changed) {
        super(parent, SWT.NONE);
        GridLayout layout = new GridLayout(4 + more, false);
        layout.marginWidth = 0;
        layout.marginHeight = 2;
        setLayout(layout);
        from = field("From", "field:from", today);
        to = field("to", "field:to", today);
        from.onChange(value -> tell(changed));
        to.onChange(value -> tell(changed));
    }

    private DayField field(String name, String id, Supplier<LocalDate> today) {
        Label label = new Label(this, SWT.NONE);
        label.setText(name);
        DayField field = new DayField(this, today);
        GridData place = new GridData(SWT.LEFT, SWT.CENTER, false, false);
        place.widthHint = 118;
        field.setLayoutData(place);
        Spoken.id(field.control(), id);
        Spoken.label(field.control(), label);
        return field;
    }

    /** Shows days without telling anybody. */
    void show(Days days) {
        filling = true;
        from.set(days.from());
        to.set(days.to());
        filling = false;
    }

    /** The days, where both are there in their order. */
    Optional<Days> days() {
        return from.value()
                .flatMap(first ->
                        to.value().filter(last -> !last.isBefore(first)).map(last -> new Days(first, last)));
    }

    private void tell(Consumer<Days> changed) {
        if (!filling) {
            days().ifPresent(changed);
        }
    }

    @Override
    public boolean setFocus() {
        return from.setFocus();
    }
}
