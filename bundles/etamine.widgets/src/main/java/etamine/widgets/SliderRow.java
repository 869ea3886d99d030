package etamine.widgets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;

/**
 * A number set by a slider or exactly by typing, with its unit and a button back to where it started. Listeners hear of
 * every move at once.
 */
public final class SliderRow extends Composite {
    private static final int FIELD = 78;
    private final List<Consumer<BigDecimal>> listeners = new ArrayList<>();
    private final Label label;
    private final Label note;
    private final Label unit;
    private final Scale slider;
    private final NumberField field;
    private final Button reset;
    private Range range = new Range(BigDecimal.ZERO, BigDecimal.TEN, BigDecimal.ONE, BigDecimal.ZERO);
    private BigDecimal value = BigDecimal.ZERO;
    private boolean moving;

    /**
     * What the slider spans; typing may go beyond it.
     *
     * @param least at its left
     * @param most at its right; more than the least
     * @param step from one place to the next; more than zero
     * @param start where it starts and where the button leads back to
     */
    public record Range(BigDecimal least, BigDecimal most, BigDecimal step, BigDecimal start) {

        /** A range written as texts. */
        public static Range of(String least, String most, String step, String start) {
            return new Range(new BigDecimal(least), new BigDecimal(most), new BigDecimal(step), new BigDecimal(start));
        }

        private int places() {
            return most.subtract(least).divide(step, 0, RoundingMode.CEILING).intValueExact();
        }

        private int place(BigDecimal number) {
            int place = number.subtract(least)
                    .divide(step, 0, RoundingMode.HALF_UP)
                    .max(BigDecimal.ZERO)
                    .min(BigDecimal.valueOf(places()))
                    .intValue();
            return place;
        }

        private BigDecimal at(int place) {
            return least.add(step.multiply(BigDecimal.valueOf(place))).min(most);
        }
    }

    /**
     * A row at its start.
     *
     * @param id of the exact entry, such as {@code field:portion}; the slider's is that with {@code :slider}
     * @param entry makes the field for exact entry, with its limits
     */
    public SliderRow(Composite parent, String id, java.util.function.Function<Composite, NumberField> entry) {
        super(parent, SWT.NONE);
        GridLayout layout = new GridLayout(4, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        setLayout(layout);
        Composite heading = heading();
        label = new Label(heading, SWT.NONE);
        note = new Label(heading, SWT.NONE);
        note.setForeground(Palette.of(this).quiet());
        slider = Spoken.id(new Scale(this, SWT.HORIZONTAL), id + ":slider");
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.minimumWidth = 80;
        slider.setLayoutData(wide);
        field = entry.apply(this);
        field.setLayoutData(width(FIELD));
        Spoken.id(field.control(), id);
        unit = new Label(this, SWT.NONE);
        unit.setLayoutData(width(46));
        reset = Spoken.id(new Button(this, SWT.PUSH | SWT.FLAT), id + ":reset");
        reset.setImage(Icons.small(reset, "undo"));
        reset.setToolTipText("Back to the start");
        Spoken.name(reset, "Back to the start");
        reset.addListener(SWT.Selection, event -> reset());
        slider.addListener(SWT.Selection, event -> slid());
        field.onChange(typed -> typed.filter(number -> !moving).ifPresent(number -> move(number, false)));
    }

    private Composite heading() {
        Composite line = new Composite(this, SWT.NONE);
        line.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 4, 1));
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.marginTop = 0;
        row.marginBottom = 0;
        row.marginLeft = 4;
        row.spacing = 10;
        line.setLayout(row);
        return line;
    }

    /** Says what the value means, beside the name. */
    public SliderRow note(String text) {
        note.setText(text.replace("&", "&&"));
        note.requestLayout();
        return this;
    }

    /** Names it and says what its numbers are in. */
    public SliderRow named(String name, String inUnit) {
        label.setText(name.replace("&", "&&"));
        unit.setText(inUnit);
        Spoken.name(field.control(), name + ", " + inUnit);
        Spoken.name(slider, name + ", " + inUnit);
        return this;
    }

    /** Sets what it spans and goes to the start, without telling anybody. */
    public SliderRow range(Range newRange) {
        range = newRange;
        slider.setMaximum(Math.max(1, range.places()));
        slider.setPageIncrement(Math.max(1, range.places() / 10));
        show(range.start());
        return this;
    }

    /** Calls back with every value a person sets. */
    public SliderRow onChange(Consumer<BigDecimal> listener) {
        listeners.add(listener);
        return this;
    }

    /** The exact entry. */
    public NumberField field() {
        return field;
    }

    /** The value. */
    public BigDecimal value() {
        return value;
    }

    /** Whether it stands elsewhere than at its start. */
    public boolean isMoved() {
        return value.compareTo(range.start()) != 0;
    }

    /** Shows a value without telling anybody. */
    public void show(BigDecimal newValue) {
        moving = true;
        value = newValue;
        field.set(newValue);
        slider.setSelection(range.place(newValue));
        reset.setEnabled(isMoved());
        moving = false;
    }

    /** Goes back to the start and tells. */
    public void reset() {
        move(range.start(), true);
    }

    @Override
    public boolean setFocus() {
        return field.setFocus();
    }

    @Override
    public void setEnabled(boolean enabled) {
        super.setEnabled(enabled);
        slider.setEnabled(enabled);
        field.setEnabled(enabled);
        reset.setEnabled(enabled && isMoved());
    }

    private void slid() {
        move(range.at(slider.getSelection()), true);
    }

    private void move(BigDecimal newValue, boolean write) {
        if (newValue.compareTo(value) == 0) {
            return;
        }
        if (write) {
            show(newValue);
        } else {
            value = newValue;
            slider.setSelection(range.place(newValue));
            reset.setEnabled(isMoved());
        }
        List.copyOf(listeners).forEach(listener -> listener.accept(value));
    }

    private static GridData width(int width) {
        GridData data = new GridData(SWT.FILL, SWT.CENTER, false, false);
        data.widthHint = width;
        return data;
    }
}
