package etamine.shell.app.internal;

import etamine.kitchen.today.Call;
import etamine.kitchen.today.DayMark;
import etamine.shell.Bench;
import etamine.shell.Frame;
import etamine.shell.Station;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Composite;

/** The first station: what needs somebody now, and what the picked day holds. */
final class PassStation implements Station {
    static final String ID = "pass";
    private final Days days;
    private final Supplier<Clock> clock;
    private List<Call> calls = List.of();
    private Map<LocalDate, List<DayMark>> marks = Map.of();
    private Optional<PassBench> bench = Optional.empty();

    PassStation(Days days, Supplier<Clock> clock) {
        this.days = days;
        this.clock = clock;
    }

    /** Whether a call wants somebody today. */
    static boolean pressing(Call call) {
        return call.urgency() != Call.Urgency.SOON;
    }

    void show(List<Call> newCalls) {
        calls = newCalls;
        bench.ifPresent(PassBench::refresh);
    }

    void showMarks(Map<LocalDate, List<DayMark>> newMarks) {
        marks = newMarks;
        bench.ifPresent(PassBench::refresh);
    }

    List<Call> calls() {
        return calls;
    }

    LocalDate day() {
        return days.picked();
    }

    List<DayMark> marksOfDay() {
        return marks.getOrDefault(days.picked(), List.of()).stream()
                .sorted(Comparator.comparing(DayMark::kind).thenComparing(DayMark::text))
                .toList();
    }

    /** The clock of the house. */
    Clock clock() {
        return clock.get();
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String name() {
        return "The pass";
    }

    @Override
    public String icon() {
        return "pass";
    }

    @Override
    public int order() {
        return 0;
    }

    @Override
    public Set<String> shows() {
        return Set.of("call");
    }

    @Override
    public Bench open(Composite parent, Frame frame) {
        PassBench made = new PassBench(parent, frame, this);
        bench = Optional.of(made);
        parent.addListener(org.eclipse.swt.SWT.Dispose, event -> bench = Optional.empty());
        return made;
    }
}
