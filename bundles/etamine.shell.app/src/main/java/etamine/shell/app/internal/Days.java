package etamine.shell.app.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Today and the day every bench speaks of. Used on the window's thread. */
final class Days {
    /** How many days the ribbon shows. */
    static final int SPAN = 14;

    private final List<Runnable> listeners = new ArrayList<>();
    private LocalDate today;
    private LocalDate picked;

    Days(LocalDate today) {
        this.today = today;
        this.picked = today;
    }

    LocalDate today() {
        return today;
    }

    LocalDate picked() {
        return picked;
    }

    LocalDate last() {
        return today.plusDays(SPAN - 1L);
    }

    /** Picks a day, held within the ribbon. */
    void pick(LocalDate day) {
        LocalDate held = day.isBefore(today) ? today : day.isAfter(last()) ? last() : day;
        if (!held.equals(picked)) {
            picked = held;
            listeners.forEach(Runnable::run);
        }
    }

    /** The clock went on: whoever looked at today looks at the new one. */
    void turn(LocalDate newToday) {
        if (newToday.equals(today)) {
            return;
        }
        boolean followed = picked.equals(today);
        today = newToday;
        if (followed || picked.isBefore(today) || picked.isAfter(last())) {
            picked = today;
        }
        listeners.forEach(Runnable::run);
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }
}
