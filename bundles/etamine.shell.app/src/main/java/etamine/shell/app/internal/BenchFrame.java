package etamine.shell.app.internal;

import etamine.base.Explanation;
import etamine.base.Printout;
import etamine.base.Subject;
import etamine.shell.Frame;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Shell;

/** The window as one bench sees it. */
final class BenchFrame implements Frame {
    private final String station;
    private final Window window;
    private final BooleanSupplier alive;
    private Optional<Explanation> explained = Optional.empty();

    BenchFrame(String station, Window window, BooleanSupplier alive) {
        this.station = station;
        this.window = window;
        this.alive = alive;
    }

    /** What was last explained here. */
    Optional<Explanation> explanation() {
        return explained;
    }

    @Override
    public LocalDate day() {
        return window.days().picked();
    }

    @Override
    public void explain(Explanation explanation) {
        explained = Optional.of(explanation);
        showExplained();
    }

    @Override
    public void explainNothing() {
        explained = Optional.empty();
        showExplained();
    }

    @Override
    public void go(Subject subject) {
        window.go(subject);
    }

    @Override
    public <T> void work(String label, Job<T> job, Consumer<T> then) {
        window.work().run(label, job, then, alive);
    }

    @Override
    public void print(Printout printout) {
        window.papers().print(printout);
    }

    @Override
    public void save(Printout printout) {
        window.papers().save(printout);
    }

    @Override
    public void say(String text) {
        window.work().say(text);
    }

    @Override
    public void warn(String text) {
        window.work().warn(text);
    }

    @Override
    public void actionsChanged() {
        if (window.benches().isShown(station)) {
            window.benches().actionsChanged();
        }
    }

    @Override
    public Shell window() {
        return window.shell();
    }

    private void showExplained() {
        if (window.benches().isShown(station)) {
            window.explain(explained);
        }
    }
}
