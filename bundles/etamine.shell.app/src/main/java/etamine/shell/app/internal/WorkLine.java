package etamine.shell.app.internal;

import etamine.base.Progress;
import etamine.shell.Frame;
import etamine.widgets.Icons;
import etamine.widgets.Palette;
import etamine.widgets.Prompt;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

/** The line at the bottom: what was last said, what is being done, how far it is, and a way to stop it. */
final class WorkLine extends Composite {
    private static final int UNSEEN = 150;
    private static final int GRACE = 5;
    private final Ui ui;
    private final ExecutorService threads = Executors.newFixedThreadPool(4, WorkLine::thread);
    private final List<Task> running = new ArrayList<>();
    private final Label icon;
    private final Label said;
    private final Label doing;
    private final ProgressBar bar;
    private final ToolItem stop;
    private final ToolBar stopBar;

    WorkLine(Composite parent, Ui ui) {
        super(parent, SWT.NONE);
        this.ui = ui;
        GridLayout layout = new GridLayout(5, false);
        layout.marginWidth = 10;
        layout.marginHeight = 1;
        setLayout(layout);
        icon = new Label(this, SWT.NONE);
        GridData square = new GridData(16, 18);
        square.verticalAlignment = SWT.CENTER;
        icon.setLayoutData(square);
        said = Spoken.id(new Label(this, SWT.NONE), "status");
        said.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        doing = Spoken.id(new Label(this, SWT.RIGHT), "work");
        doing.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
        bar = new ProgressBar(this, SWT.SMOOTH);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, false, false);
        wide.widthHint = 120;
        wide.heightHint = 8;
        bar.setLayoutData(wide);
        bar.setMaximum(1000);
        stopBar = new ToolBar(this, SWT.FLAT);
        stop = new ToolItem(stopBar, SWT.PUSH);
        stop.setData("id", "work:stop");
        Dressing.of(stopBar, () -> {
            stop.setImage(Icons.small(this, "stop"));
            stopBar.requestLayout();
        });
        stop.setToolTipText("Stop what is being done");
        Spoken.name(stopBar, "Stop what is being done");
        stop.addListener(SWT.Selection, event -> stopLast());
        showRunning();
    }

    void say(String text) {
        put(text, "", Tone.PLAIN);
    }

    void warn(String text) {
        put(text, "warning", Tone.WARN);
    }

    boolean busy() {
        return !running.isEmpty();
    }

    /** Asks whether to stop what is being done; stops it if so. */
    boolean confirmStop(Shell shell) {
        String what = running.isEmpty() ? "" : running.get(running.size() - 1).label;
        boolean yes = Prompt.confirm(shell, "Still working", what + " is not finished.", "Stop and close");
        if (yes) {
            List.copyOf(running).forEach(task -> task.cancelled = true);
        }
        return yes;
    }

    /** Runs a job in the background; {@code then} gets its result on the window's thread if {@code wanted} says so. */
    <T> void run(String label, Frame.Job<T> job, Consumer<T> then, BooleanSupplier wanted) {
        Task task = new Task(label);
        running.add(task);
        getDisplay().timerExec(UNSEEN, this::showRunning);
        threads.execute(() -> {
            try {
                T result = job.run(task);
                ui.later(() -> end(task, () -> deliver(result, then, wanted)));
            } catch (Throwable problem) {
                Trouble.note(label, problem);
                ui.later(() -> end(task, () -> failed(task, problem)));
            }
        });
    }

    /** Stops what is being done and waits a little for it to end, so that no write is cut short. */
    void close() {
        List.copyOf(running).forEach(task -> task.cancelled = true);
        threads.shutdown();
        try {
            if (!threads.awaitTermination(GRACE, TimeUnit.SECONDS)) {
                threads.shutdownNow();
            }
        } catch (InterruptedException stopNow) {
            threads.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }

    private static <T> void deliver(T result, Consumer<T> then, BooleanSupplier wanted) {
        if (wanted.getAsBoolean()) {
            then.accept(result);
        }
    }

    private void failed(Task task, Throwable problem) {
        if (task.cancelled) {
            say(task.label + ": stopped.");
        } else {
            warn(task.label + ": " + Sentences.of(problem));
        }
    }

    private void end(Task task, Runnable after) {
        running.remove(task);
        if (!isDisposed()) {
            showRunning();
            after.run();
        }
    }

    private void stopLast() {
        if (busy()) {
            running.get(running.size() - 1).cancelled = true;
            showRunning();
        }
    }

    private void showRunning() {
        if (isDisposed()) {
            return;
        }
        boolean seen = busy();
        for (var control : List.of(doing, bar, stopBar)) {
            control.setVisible(seen);
        }
        if (seen) {
            Task task = running.get(running.size() - 1);
            doing.setText(task.line(running.size()));
            bar.setSelection(task.share < 0 ? 500 : (int) (task.share * 1000));
            stop.setEnabled(!task.cancelled);
            layout();
        }
    }

    private void put(String text, String iconName, Tone tone) {
        said.setText(text.replace("&", "&&").replace('\n', ' '));
        said.setToolTipText(text.isEmpty() ? null : text);
        said.setForeground(tone == Tone.WARN ? Palette.of(this).text(Tone.WARN) : null);
        icon.setImage(iconName.isEmpty() ? null : Icons.small(this, iconName, tone));
    }

    private final class Task implements Progress {
        private final String label;
        private final Runnable refresh = ui.coalesced(60, WorkLine.this::showRunning);
        private volatile String step = "";
        private volatile double share = -1;
        private volatile boolean cancelled;

        Task(String label) {
            this.label = label;
        }

        @Override
        public void at(String newStep, double newShare) {
            step = newStep;
            share = Math.min(1, newShare);
            refresh.run();
        }

        @Override
        public boolean cancelled() {
            return cancelled;
        }

        String line(int count) {
            String others = count > 1 ? " (and " + (count - 1) + " more)" : "";
            return label + (step.isEmpty() ? "" : ": " + step) + others + (cancelled ? ", stopping" : "");
        }
    }

    private static Thread thread(Runnable task) {
        Thread thread = new Thread(task, "work");
        thread.setDaemon(true);
        return thread;
    }
}
