package etamine.shell.app.internal;

import etamine.base.Subject;
import etamine.kitchen.find.Finder;
import etamine.kitchen.find.Finder.Found;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.Spoken;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Finds anything in any module while somebody types, and goes there. */
final class FindBox {
    private static final int PER_MODULE = 12;
    private static final int LIMIT = 1_000;
    private final Shell shell;
    private final Text text;
    private final ListTable<Found> table;
    private final Gathering gathering;
    private final Ui ui;
    private final List<StationPlace> places;
    private final Consumer<Subject> open;
    private final Asking asking = new Asking(LIMIT);
    private final ExecutorService thread = Executors.newSingleThreadExecutor();
    private final Runnable search;

    FindBox(Shell parent, Gathering gathering, Ui ui, List<StationPlace> places, Consumer<Subject> open) {
        this.gathering = gathering;
        this.ui = ui;
        this.places = places;
        this.open = open;
        shell = Spoken.id(new Shell(parent, SWT.CLOSE | SWT.TITLE | SWT.RESIZE), "find");
        shell.setText("Find");
        shell.setLayout(new GridLayout());
        text = Spoken.id(new Text(shell, SWT.SEARCH | SWT.BORDER), "find:text");
        text.setMessage("Part of a name");
        text.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        Spoken.name(text, "Find in all modules");
        table = new ListTable<Found>(
                        shell,
                        "find:table",
                        found -> found.subject().toString(),
                        List.of(Column.words("Found", 6, Found::title), Column.words("What it is", 4, Found::hint)))
                .onOpen(this::go);
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        search = ui.coalesced(60, this::search);
        text.addListener(SWT.Modify, event -> search.run());
        text.addListener(SWT.DefaultSelection, event -> first());
        text.addListener(SWT.KeyDown, this::down);
        shell.addListener(SWT.Traverse, this::escape);
        shell.addListener(SWT.Dispose, event -> close());
        place(parent.getBounds());
    }

    void open() {
        search();
        shell.open();
        text.setFocus();
    }

    private void place(Rectangle parent) {
        int width = Math.min(560, parent.width - 40);
        shell.setBounds(
                parent.x + (parent.width - width) / 2, parent.y + 110, width, Math.min(420, parent.height - 140));
    }

    private void search() {
        if (shell.isDisposed()) {
            return;
        }
        String typed = text.getText().strip();
        thread.execute(() -> {
            List<Found> found = find(typed);
            ui.later(() -> {
                if (!shell.isDisposed() && text.getText().strip().equals(typed)) {
                    table.setRows(found);
                }
            });
        });
    }

    private List<Found> find(String typed) {
        List<Found> found = new ArrayList<>();
        String low = typed.toLowerCase(Locale.ROOT);
        places.stream()
                .filter(place -> place.name().toLowerCase(Locale.ROOT).contains(low))
                .map(place -> new Found(new Subject("station", place.id()), place.name(), "station"))
                .forEach(found::add);
        if (!typed.isEmpty()) {
            found.addAll(
                    0,
                    asking.all(gathering.finders().now(), (Finder finder) -> finder.find(typed, PER_MODULE))
                            .things());
        }
        return List.copyOf(found);
    }

    private void down(Event event) {
        if (event.keyCode == SWT.ARROW_DOWN && !table.shown().isEmpty()) {
            table.setFocus();
            event.doit = false;
        }
    }

    private void escape(Event event) {
        if (event.detail == SWT.TRAVERSE_ESCAPE) {
            event.doit = false;
            shell.close();
        }
    }

    private void first() {
        table.selected().or(() -> table.shown().stream().findFirst()).ifPresent(this::go);
    }

    private void go(Found found) {
        shell.close();
        open.accept(found.subject());
    }

    private void close() {
        thread.shutdownNow();
        asking.close();
    }
}
