package etamine.recipes.ui.internal;

import etamine.base.Explanation;
import etamine.base.Printout;
import etamine.base.Progress;
import etamine.base.Subject;
import etamine.shell.Frame;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Shell;

/** A window that works at once and remembers what it was told. */
final class SetFrame implements Frame {
    final List<String> told = new ArrayList<>();
    private final Shell shell;

    SetFrame(Shell shell) {
        this.shell = shell;
    }

    @Override
    public LocalDate day() {
        return LocalDate.of(2026, 11, 27);
    }

    @Override
    public void explain(Explanation explanation) {
        told.add("explain " + explanation.title());
    }

    @Override
    public void explainNothing() {
        told.add("explain nothing");
    }

    @Override
    public void go(Subject subject) {
        told.add("go " + subject);
    }

    @Override
    public <T> void work(String label, Job<T> job, Consumer<T> then) {
        try {
            then.accept(job.run(Progress.unseen()));
        } catch (Exception problem) {
            told.add("warn " + problem.getMessage());
        }
    }

    @Override
    public void say(String text) {
        told.add("say " + text);
    }

    @Override
    public void warn(String text) {
        told.add("warn " + text);
    }

    @Override
    public void actionsChanged() {
        told.add("actions");
    }

    @Override
    public void print(Printout printout) {
        told.add("print " + printout.title());
    }

    @Override
    public void save(Printout printout) {
        told.add("save " + printout.title());
    }

    @Override
    public Shell window() {
        return shell;
    }
}
