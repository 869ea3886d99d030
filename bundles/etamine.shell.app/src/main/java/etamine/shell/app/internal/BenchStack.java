package etamine.shell.app.internal;

import etamine.base.Subject;
import etamine.shell.BenchAction;
import etamine.shell.Station;
import etamine.widgets.Fonts;
import etamine.widgets.Spoken;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/**
 * The bench in the middle: keeps the benches that were opened, shows one, and puts a note in place of one that failed or
 * whose module is gone.
 */
final class BenchStack extends Composite {
    private final Window window;
    private final Label title;
    private final ActionBar bar;
    private final Composite area;
    private final StackLayout stack = new StackLayout();
    private final Map<String, OpenBench> open = new LinkedHashMap<>();
    private final Map<String, Station> stations = new LinkedHashMap<>();
    private Optional<Composite> inPlace = Optional.empty();
    private String shown = PassStation.ID;
    private boolean bookOpen = true;
    private boolean closing;

    BenchStack(Composite parent, Window window) {
        super(parent, SWT.NONE);
        this.window = window;
        // While the window goes, the toolkit looks for a new place for the keyboard among controls half gone.
        window.shell().addListener(SWT.Dispose, event -> closing = true);
        setLayout(Layouts.plain(1));
        Composite head = new Composite(this, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        layout.marginHeight = 6;
        layout.horizontalSpacing = 16;
        head.setLayout(layout);
        head.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        title = Spoken.id(new Label(head, SWT.NONE), "bench:title");
        title.setFont(Fonts.heading(this));
        bar = new ActionBar(head);
        bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        area = new Composite(this, SWT.NONE);
        area.setLayout(stack);
        area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    }

    /** Takes the stations there are now, the pass first. */
    void stations(List<Station> services, Station pass) {
        stations.clear();
        stations.put(pass.id(), pass);
        for (Station service : services) {
            Guard.value("asking a station for its name", service::id).ifPresent(id -> stations.put(id, service));
        }
        for (OpenBench bench : List.copyOf(open.values())) {
            if (stations.get(bench.id()) != bench.station()) {
                open.remove(bench.id());
                bench.dispose();
            }
        }
        if (inPlace.isPresent() || !open.containsKey(shown)) {
            show(shown);
        }
    }

    /** The stations as they stand on the rail. */
    List<StationPlace> places() {
        List<StationPlace> places = new ArrayList<>();
        stations.forEach((id, station) -> Guard.value(
                        "asking a station for its place",
                        () -> new StationPlace(id, station.name(), station.icon(), station.order()))
                .ifPresent(places::add));
        places.sort(Comparator.comparing(StationPlace::order).thenComparing(StationPlace::name));
        return places;
    }

    /** The id of the station shown. */
    String shown() {
        return shown;
    }

    /** The station that shows this. */
    Optional<String> stationFor(Subject subject) {
        if (subject.kind().equals("station") && stations.containsKey(subject.id())) {
            return Optional.of(subject.id());
        }
        return stations.entrySet().stream()
                .filter(entry -> Guard.value("asking a station what it shows", entry.getValue()::shows)
                        .orElse(Set.of())
                        .contains(subject.kind()))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** Brings a station's bench to the front, opening it if need be. */
    void show(String id) {
        shown = id;
        dropNote();
        if (!bookOpen) {
            note(parent -> window.desk().welcome(parent));
        } else if (stations.containsKey(id)) {
            bringUp(id);
        } else {
            note(parent -> Notes.build(
                    parent,
                    "This station is gone",
                    "Its module was stopped or its book was closed. "
                            + "What it kept is still in the book; it comes back with its module."));
        }
        area.layout();
        window.explain(current().flatMap(OpenBench::explanation));
        actionsChanged();
    }

    /** Shows a subject on a bench that is open. */
    void showSubject(String id, Subject subject) {
        Optional.ofNullable(open.get(id)).ifPresent(bench -> bench.show(subject));
    }

    /** Whether a book is open; without one there is a page that offers to open one. */
    void bookOpen(boolean isOpen) {
        bookOpen = isOpen;
        show(shown);
    }

    /** The book or the day changed: the shown bench reads again now, the others when they are shown. */
    void refreshAll() {
        open.values().forEach(OpenBench::stale);
        current().ifPresent(OpenBench::refresh);
        actionsChanged();
    }

    /** Asks the shown bench what can be done. */
    void actionsChanged() {
        List<BenchAction> actions = current().map(OpenBench::actions).orElse(List.of());
        title.setText(places().stream()
                .filter(place -> bookOpen && place.id().equals(shown))
                .map(StationPlace::name)
                .findFirst()
                .orElse(""));
        bar.show(actions);
        window.actionsChanged(actions);
        layout(true, true);
    }

    /** Whether this bench is the one in front. */
    boolean isShown(String id) {
        return shown.equals(id);
    }

    Composite bar() {
        return bar;
    }

    void focus() {
        current().ifPresentOrElse(OpenBench::focus, area::setFocus);
    }

    @Override
    public boolean setFocus() {
        if (closing) {
            return false;
        }
        focus();
        return true;
    }

    private Optional<OpenBench> current() {
        return inPlace.isPresent() ? Optional.empty() : Optional.ofNullable(open.get(shown));
    }

    private void bringUp(String id) {
        if (!open.containsKey(id)) {
            open.put(id, new OpenBench(id, Objects.requireNonNull(stations.get(id)), area, window));
        }
        OpenBench bench = Objects.requireNonNull(open.get(id));
        stack.topControl = bench.host();
        bench.refreshIfStale();
    }

    private void note(java.util.function.Function<Composite, Composite> build) {
        Composite note = build.apply(area);
        inPlace = Optional.of(note);
        stack.topControl = note;
    }

    private void dropNote() {
        inPlace.ifPresent(Composite::dispose);
        inPlace = Optional.empty();
    }
}
