package etamine.widgets;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/** A day as 2026-11-27, or its last parts (27, 11-27); the up and down arrows go a day on or back, page keys a week. */
public final class DayField extends EntryField<LocalDate> {
    private final Supplier<LocalDate> today;

    /** An empty field; {@code today} completes shortened days and is where the arrows start. */
    public DayField(Composite parent, Supplier<LocalDate> today) {
        super(parent, "yyyy-mm-dd");
        this.today = today;
        control().addListener(SWT.KeyDown, this::step);
    }

    @Override
    protected LocalDate read(String typed) {
        String[] parts = typed.split("[-./ ]+");
        try {
            LocalDate base = today.get();
            return switch (parts.length) {
                case 1 -> base.withDayOfMonth(number(parts[0]));
                case 2 -> LocalDate.of(base.getYear(), number(parts[0]), number(parts[1]));
                case 3 -> LocalDate.of(number(parts[0]), number(parts[1]), number(parts[2]));
                default -> throw new DateTimeException("too many parts");
            };
        } catch (DateTimeException | NumberFormatException unreadable) {
            throw new IllegalArgumentException(
                    "Write a day as year-month-day, such as " + today.get() + ".", unreadable);
        }
    }

    @Override
    protected String write(LocalDate value) {
        return value.toString();
    }

    private static int number(String digits) {
        return Integer.parseInt(digits);
    }

    private void step(Event event) {
        if ((event.stateMask & SWT.MODIFIER_MASK) != 0) {
            return;
        }
        int days = switch (event.keyCode) {
            case SWT.ARROW_UP -> 1;
            case SWT.ARROW_DOWN -> -1;
            case SWT.PAGE_UP -> 7;
            case SWT.PAGE_DOWN -> -7;
            default -> 0;
        };
        if (days != 0) {
            set(value().orElseGet(today).plusDays(days));
            control().selectAll();
            event.doit = false;
        }
    }
}
