package etamine.shell.app.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.kitchen.house.Kitchen;
import etamine.shell.BenchAction;
import etamine.widgets.Palette;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/**
 * The window: lays out ribbon, stations, bench, slate and status line, and leads from one to the other. Lives on the
 * display's thread.
 */
final class Window {
    private static final Point MOST = new Point(1520, 960);
    private static final int MINUTE = 60_000;
    private final Display display;
    private final Gathering gathering;
    private final WindowSettings settings;
    private final Ui ui;
    private final Shell shell;
    private final Days days;
    private final WorkLine work;
    private final WeekRibbon ribbon;
    private final Banner banner;
    private final StationRail rail;
    private final BenchStack benches;
    private final SashForm sash;
    private final Slate slate;
    private final PassStation pass;
    private final Today today;
    private final BookDesk desk;
    private final PaperDesk papers;
    private final BookWatch watch;
    private final MenuBar menu;

    Window(Display display, Gathering gathering, WindowSettings settings) {
        this.display = display;
        this.gathering = gathering;
        this.settings = settings;
        shell = new Shell(display, SWT.SHELL_TRIM);
        ui = new Ui(shell);
        shell.setText("Etamine");
        Dressing.of(shell, () -> shell.setImages(WindowIcon.images(display)));
        shell.setLayout(Layouts.plain(1));
        days = new Days(todayInTheHouse());
        ribbon = fill(new WeekRibbon(shell, days, this::go));
        banner = fill(new Banner(shell));
        Layouts.line(shell);
        Composite middle = new Composite(shell, SWT.NONE);
        middle.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        middle.setLayout(Layouts.plain(3));
        rail = new StationRail(middle);
        rail.setLayoutData(new GridData(SWT.FILL, SWT.FILL, false, true));
        Label divider = new Label(middle, SWT.NONE);
        divider.setBackground(Palette.of(shell).line());
        GridData upright = new GridData(SWT.FILL, SWT.FILL, false, true);
        upright.widthHint = 1;
        divider.setLayoutData(upright);
        sash = new SashForm(middle, SWT.HORIZONTAL | SWT.SMOOTH);
        sash.setSashWidth(5);
        sash.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        Layouts.line(shell);
        work = fill(new WorkLine(shell, ui));
        desk = new BookDesk(shell, gathering, work);
        papers = new PaperDesk(shell, work, ui, new DesktopPress.Desktop());
        pass = new PassStation(days, this::clock);
        benches = new BenchStack(sash, this);
        slate = new Slate(sash, this::go, this::toggleSlate);
        sash.setWeights(73, 27);
        today = new Today(gathering, ui, days);
        watch = new BookWatch(gathering, ui, this::bookCame, this::bookChanged);
        menu = new MenuBar(this, shell, desk);
        connect();
    }

    /** Shows the window; opens the book only after the first paint. */
    void open() {
        Rectangle screen = display.getPrimaryMonitor().getClientArea();
        Point usual = new Point(Math.min(MOST.x, screen.width * 94 / 100), Math.min(MOST.y, screen.height * 92 / 100));
        Point size = settings.size().orElse(usual);
        shell.setSize(Math.min(size.x, screen.width), Math.min(size.y, screen.height));
        Point outer = shell.getSize();
        shell.setLocation(screen.x + (screen.width - outer.x) / 2, screen.y + (screen.height - outer.y) / 2);
        stationsChanged();
        shell.addListener(SWT.Close, this::closing);
        shell.addListener(SWT.Dispose, event -> {
            watch.close();
            today.close();
        });
        FirstPaint.then(shell, settings.paintFile(), this::afterFirstPaint);
        shell.open();
        rail.setFocus();
    }

    /** Handles events until the window is closed, then lets go of everything. */
    void runUntilClosed() {
        while (!shell.isDisposed()) {
            try {
                if (!display.readAndDispatch()) {
                    display.sleep();
                }
            } catch (RuntimeException | LinkageError problem) {
                Trouble.note("handling an event", problem);
                if (!shell.isDisposed()) {
                    work.warn("Something in the window failed: " + Sentences.of(problem));
                }
            }
        }
        work.close();
        gathering.session().close();
    }

    Shell shell() {
        return shell;
    }

    Days days() {
        return days;
    }

    WorkLine work() {
        return work;
    }

    Ui ui() {
        return ui;
    }

    BookDesk desk() {
        return desk;
    }

    PaperDesk papers() {
        return papers;
    }

    BenchStack benches() {
        return benches;
    }

    void openStation(String id) {
        rail.pick(id);
        benches.show(id);
        benches.focus();
        ui.later(this::focusOnceLaidOut);
    }

    /** A bench that opens has no room yet in its first moment, and what has no room cannot have the keyboard. */
    private void focusOnceLaidOut() {
        Control now = shell.isDisposed() ? null : shell.getDisplay().getFocusControl();
        while (now != null && now != benches) {
            now = now.getParent();
        }
        if (now == null && !shell.isDisposed()) {
            benches.focus();
        }
    }

    /** Shows a subject at the station that knows its kind. */
    void go(Subject subject) {
        if (subject.kind().equals("day")) {
            days.pick(LocalDate.parse(subject.id()));
            return;
        }
        Optional<String> station = benches.stationFor(subject);
        station.ifPresentOrElse(
                id -> {
                    openStation(id);
                    benches.showSubject(id, subject);
                },
                () -> work.warn("No open station shows this kind of thing: " + subject.kind() + "."));
    }

    void explain(Optional<Explanation> explanation) {
        slate.show(explanation);
    }

    void toggleSlate() {
        boolean close = sash.getMaximizedControl() == null;
        sash.setMaximizedControl(close ? benches : null);
        slate.setVisible(!close);
        menu.slateShown(!close);
    }

    /** Moves the keyboard to the next part of the window. */
    void nextPart(boolean forward) {
        PartCycle.of(List.of(ribbon, rail, benches.bar(), benches, slate)).move(display.getFocusControl(), forward);
    }

    void actionsChanged(List<BenchAction> actions) {
        menu.actions(actions);
    }

    void find() {
        new FindBox(shell, gathering, ui, benches.places(), this::go).open();
    }

    private void connect() {
        rail.onPick(benches::show);
        desk.onState(() -> benches.bookOpen(gathering.books().latest().isPresent()));
        days.onChange(() -> {
            ribbon.daysChanged();
            benches.refreshAll();
        });
        today.onCalls(calls -> {
            pass.show(calls);
            rail.count(PassStation.ID, (int)
                    calls.stream().filter(PassStation::pressing).count());
        });
        today.onMarks(marks -> {
            ribbon.show(marks);
            pass.showMarks(marks);
        });
        gathering.stations().onChange(ui.coalesced(30, this::stationsChanged));
        gathering.calls().onChange(ui.coalesced(100, today::ask));
        gathering.marks().onChange(ui.coalesced(100, today::ask));
        gathering.kitchens().onChange(ui.coalesced(30, () -> days.turn(todayInTheHouse())));
        display.timerExec(MINUTE, this::everyMinute);
    }

    private void afterFirstPaint() {
        Dressing.now(display);
        watch.start();
        today.ask();
        desk.openFirst(settings);
    }

    private void everyMinute() {
        if (!shell.isDisposed()) {
            days.turn(todayInTheHouse());
            today.ask();
            display.timerExec(MINUTE, this::everyMinute);
        }
    }

    private void stationsChanged() {
        if (!shell.isDisposed()) {
            benches.stations(gathering.stations().now(), pass);
            rail.show(benches.places());
            rail.pick(benches.shown());
            menu.stations(benches.places());
        }
    }

    private void bookCame(BookWatch.View view) {
        showBook(view);
        benches.bookOpen(view.open());
        days.turn(todayInTheHouse());
        today.ask();
    }

    private void bookChanged(BookWatch.View view) {
        showBook(view);
        benches.refreshAll();
        today.ask();
    }

    private void showBook(BookWatch.View view) {
        shell.setText(view.title());
        banner.show(view.readOnly());
        menu.history(view);
    }

    private void closing(Event event) {
        if (work.busy() && !work.confirmStop(shell)) {
            event.doit = false;
        }
    }

    private LocalDate todayInTheHouse() {
        return gathering.kitchens().latest().map(Kitchen::today).orElseGet(LocalDate::now);
    }

    private Clock clock() {
        return gathering.kitchens().latest().map(Kitchen::clock).orElseGet(Clock::systemDefaultZone);
    }

    private static <C extends Control> C fill(C control) {
        control.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return control;
    }
}
