package etamine.shell.app.internal;

import etamine.base.Subject;
import etamine.kitchen.today.Call;
import etamine.kitchen.today.CallSource;
import etamine.kitchen.today.DayMark;
import etamine.kitchen.today.DayMarkSource;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Gathers calls and day marks from all modules in the background. A source that throws or hangs becomes a call itself and
 * never holds up the others.
 */
final class Today implements AutoCloseable {
    private static final long LIMIT = 5_000;
    private final Gathering gathering;
    private final Ui ui;
    private final Days days;
    private final Asking asking = new Asking(LIMIT);
    private final ExecutorService thread = Executors.newSingleThreadExecutor(Today::thread);
    private final Runnable wish;
    private Consumer<List<Call>> onCalls = calls -> {};
    private Consumer<Map<LocalDate, List<DayMark>>> onMarks = marks -> {};

    Today(Gathering gathering, Ui ui, Days days) {
        this.gathering = gathering;
        this.ui = ui;
        this.days = days;
        this.wish = ui.coalesced(120, this::start);
    }

    void onCalls(Consumer<List<Call>> listener) {
        onCalls = listener;
    }

    void onMarks(Consumer<Map<LocalDate, List<DayMark>>> listener) {
        onMarks = listener;
    }

    /** Asks all sources again soon. */
    void ask() {
        wish.run();
    }

    @Override
    public void close() {
        thread.shutdownNow();
        asking.close();
    }

    private void start() {
        LocalDate from = days.today();
        LocalDate to = days.last();
        if (!thread.isShutdown()) {
            thread.execute(() -> gather(from, to));
        }
    }

    private void gather(LocalDate from, LocalDate to) {
        Instant now = now();
        Asking.Gleaned<DayMark> marks =
                asking.all(gathering.marks().now(), (DayMarkSource source) -> source.marks(from, to));
        Asking.Gleaned<Call> calls = asking.all(gathering.calls().now(), (CallSource source) -> source.calls(now));
        Map<LocalDate, List<DayMark>> byDay =
                marks.things().stream().collect(Collectors.groupingBy(DayMark::day, TreeMap::new, Collectors.toList()));
        List<Call> all = sorted(calls, marks.failures());
        ui.later(() -> {
            onMarks.accept(byDay);
            onCalls.accept(all);
        });
    }

    private Instant now() {
        return gathering
                .kitchens()
                .latest()
                .flatMap(kitchen ->
                        Guard.value("asking the time", () -> kitchen.clock().instant()))
                .orElseGet(Instant::now);
    }

    /** Calls in the order they want somebody, each once, after the complaints about sources that failed. */
    static List<Call> sorted(Asking.Gleaned<Call> calls, Map<String, String> moreFailures) {
        Map<String, Call> byId = new TreeMap<>();
        calls.things().forEach(call -> byId.putIfAbsent(call.id(), call));
        Map<String, String> failures = new TreeMap<>(moreFailures);
        failures.putAll(calls.failures());
        failures.forEach((module, text) -> byId.put("failed/" + module, complaint(module, text)));
        List<Call> sorted = new ArrayList<>(byId.values());
        sorted.sort(Comparator.comparing(Call::urgency)
                .thenComparing(call -> call.due().orElse(Instant.MAX))
                .thenComparing(Call::text));
        return List.copyOf(sorted);
    }

    private static Call complaint(String module, String text) {
        String sentence = "The module " + module + " " + text + ". Its calls may be missing here.";
        return new Call(
                "failed/" + module, Call.Urgency.TODAY, sentence, Optional.empty(), new Subject("station", "modules"));
    }

    private static Thread thread(Runnable task) {
        Thread thread = new Thread(task, "today");
        thread.setDaemon(true);
        return thread;
    }
}
