package etamine.shell.app.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Station;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** A station's bench with what is around it; a failure inside becomes a note in its place. */
final class OpenBench {
    private static final int MARGIN = 12;
    private final String id;
    private final Station station;
    private final Composite host;
    private final BenchFrame frame;
    private Optional<Bench> bench = Optional.empty();
    private boolean stale;

    OpenBench(String id, Station station, Composite parent, Window window) {
        this.id = id;
        this.station = station;
        host = new Composite(parent, SWT.NONE);
        FillLayout layout = new FillLayout();
        layout.marginWidth = MARGIN;
        layout.marginHeight = 4;
        host.setLayout(layout);
        frame = new BenchFrame(id, window, () -> !host.isDisposed());
        open();
    }

    String id() {
        return id;
    }

    Station station() {
        return station;
    }

    Composite host() {
        return host;
    }

    /** What the slate said when this bench was last in front. */
    Optional<Explanation> explanation() {
        return bench.isPresent() ? frame.explanation() : Optional.empty();
    }

    List<BenchAction> actions() {
        return bench.flatMap(open -> Guard.value("asking a bench what can be done", open::actions))
                .orElse(List.of());
    }

    void show(Subject subject) {
        guarded(open -> open.show(subject));
    }

    void focus() {
        if (bench.isPresent()) {
            guarded(Bench::focus);
        } else {
            host.setFocus();
        }
    }

    /** What it shows may be old. */
    void stale() {
        stale = true;
    }

    void refreshIfStale() {
        if (stale) {
            refresh();
        }
    }

    void refresh() {
        stale = false;
        guarded(Bench::refresh);
    }

    void dispose() {
        host.dispose();
    }

    private void open() {
        try {
            bench = Optional.of(station.open(host, frame));
        } catch (RuntimeException | LinkageError problem) {
            fail("opening", problem);
        }
        host.layout();
    }

    private void guarded(java.util.function.Consumer<Bench> call) {
        if (bench.isPresent() && !host.isDisposed()) {
            try {
                call.accept(bench.get());
            } catch (RuntimeException | LinkageError problem) {
                fail("showing", problem);
            }
        }
    }

    private void fail(String during, Throwable problem) {
        Trouble.note(during + " the station " + id, problem);
        bench = Optional.empty();
        for (Control child : host.getChildren()) {
            child.dispose();
        }
        String text = "It failed while " + during + ": " + Sentences.of(problem) + " The rest of the program goes on.";
        Composite note = Notes.build(host, "This station cannot be shown", text);
        Notes.button(note, "Try again", "station:again", this::again);
        host.layout(true, true);
    }

    private void again() {
        for (Control child : host.getChildren()) {
            child.dispose();
        }
        open();
        frame.actionsChanged();
    }
}
