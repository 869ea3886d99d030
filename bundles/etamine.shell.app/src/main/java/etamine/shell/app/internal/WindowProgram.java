package etamine.shell.app.internal;

import etamine.kitchen.find.Finder;
import etamine.kitchen.house.DemoKitchen;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.today.CallSource;
import etamine.kitchen.today.DayMarkSource;
import etamine.shell.Station;
import etamine.storage.Book;
import etamine.storage.BookSession;
import java.util.concurrent.Callable;
import org.eclipse.swt.widgets.Display;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** The program the launcher runs on the main thread: opens the window and returns when it has been closed. */
@Component(service = Callable.class, property = "launcher.main=window")
public final class WindowProgram implements Callable<Integer> {
    private final Gathering gathering;
    private final WindowSettings settings;

    /** Waits for a way to open books; everything else may come later. */
    @Activate
    public WindowProgram(BundleContext context, @Reference BookSession session) {
        gathering = Gathering.around(session);
        settings = WindowSettings.from(context::getProperty);
    }

    @Override
    public Integer call() {
        Display.setAppName("Etamine");
        Display display = new Display();
        try {
            Window window = new Window(display, gathering, settings);
            window.open();
            window.runUntilClosed();
        } finally {
            display.dispose();
        }
        return 0;
    }

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    void addBook(Book book) {
        gathering.books().add(book);
    }

    void removeBook(Book book) {
        gathering.books().remove(book);
    }

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    void addKitchen(Kitchen kitchen) {
        gathering.kitchens().add(kitchen);
    }

    void removeKitchen(Kitchen kitchen) {
        gathering.kitchens().remove(kitchen);
    }

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    void addDemo(DemoKitchen demo) {
        gathering.demos().add(demo);
    }

    void removeDemo(DemoKitchen demo) {
        gathering.demos().remove(demo);
    }

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    void addStation(Station station) {
        gathering.stations().add(station);
    }

    void removeStation(Station station) {
        gathering.stations().remove(station);
    }

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    void addCalls(CallSource source) {
        gathering.calls().add(source);
    }

    void removeCalls(CallSource source) {
        gathering.calls().remove(source);
    }

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    void addMarks(DayMarkSource source) {
        gathering.marks().add(source);
    }

    void removeMarks(DayMarkSource source) {
        gathering.marks().remove(source);
    }

    @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
    void addFinder(Finder finder) {
        gathering.finders().add(finder);
    }

    void removeFinder(Finder finder) {
        gathering.finders().remove(finder);
    }
}
