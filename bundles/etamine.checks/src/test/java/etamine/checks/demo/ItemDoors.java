package etamine.checks.demo;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What takes one item from its shelf day by day, each through its own door, in base units. */
final class ItemDoors {
    private final Map<LocalDate, Long> menu = new TreeMap<>();
    private final Map<LocalDate, Long> staff = new TreeMap<>();
    private final Map<LocalDate, Event> events = new TreeMap<>();

    /**
     * Something that happened once.
     *
     * @param kind as in the exchange form
     * @param amount base units
     * @param reason why
     */
    record Event(String kind, long amount, String reason) {
        boolean comes() {
            return kind.equals("brought");
        }
    }

    void sell(LocalDate day, long amount) {
        menu.put(day, amount);
    }

    void feed(LocalDate day, long amount) {
        staff.put(day, amount);
    }

    void happens(LocalDate day, String kind, long amount, String reason) {
        events.put(day, new Event(kind, amount, reason));
    }

    long menu(LocalDate day) {
        return menu.getOrDefault(day, 0L);
    }

    long staff(LocalDate day) {
        return staff.getOrDefault(day, 0L);
    }

    Optional<Event> gone(LocalDate day) {
        return Optional.ofNullable(events.get(day)).filter(event -> !event.comes());
    }

    Optional<Event> brought(LocalDate day) {
        return Optional.ofNullable(events.get(day)).filter(Event::comes);
    }

    /** Everything that leaves on a day. */
    Map<LocalDate, Long> taken() {
        Map<LocalDate, Long> taken = new TreeMap<>(menu);
        staff.forEach((day, amount) -> taken.merge(day, amount, Long::sum));
        events.forEach((day, event) -> {
            if (!event.comes()) {
                taken.merge(day, event.amount(), Long::sum);
            }
        });
        return taken;
    }

    long total() {
        return taken().values().stream().mapToLong(Long::longValue).sum();
    }
}
