package etamine.shell.app.internal;

import etamine.shell.BenchAction;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;

/** The menus: the book, taking back, the bench's own actions, ways through the window, help with keys. */
final class MenuBar {
    private final Window window;
    private final Shell shell;
    private final Menu bar;
    private final MenuItem undo;
    private final MenuItem redo;
    private final MenuItem demo;
    private final MenuItem slate;
    private final Menu bench;
    private final Menu go;
    private final int goFixed;
    private final List<KeyHelp.Row> keys = new ArrayList<>();
    private List<BenchAction> actions = List.of();

    MenuBar(Window window, Shell shell, BookDesk desk) {
        this.window = window;
        this.shell = shell;
        bar = new Menu(shell, SWT.BAR);
        Menu book = menu("&Book");
        item(book, "&New book\u2026", SWT.MOD1 | SWT.MOD2 | 'N', "book:new", desk::create);
        item(book, "&Open another\u2026", SWT.MOD1 | 'O', "book:open", desk::open);
        demo = item(book, "&Demo kitchen\u2026", 0, "book:demo", desk::demo);
        new MenuItem(book, SWT.SEPARATOR);
        item(book, "&Make a backup\u2026", SWT.MOD1 | SWT.MOD2 | 'B', "book:backup", desk::backup);
        new MenuItem(book, SWT.SEPARATOR);
        item(book, "&Leave", SWT.MOD1 | 'Q', "book:leave", shell::close);
        book.addListener(SWT.Show, event -> demo.setEnabled(desk.hasDemo()));
        Menu edit = menu("&Edit");
        undo = item(edit, "&Undo", SWT.MOD1 | 'Z', "edit:undo", desk::undo);
        redo = item(edit, "&Redo", SWT.MOD1 | SWT.MOD2 | 'Z', "edit:redo", desk::redo);
        new MenuItem(edit, SWT.SEPARATOR);
        item(edit, "&Find\u2026", SWT.MOD1 | 'F', "edit:find", window::find);
        bench = menu("Be&nch");
        go = menu("&Go");
        slate = new MenuItem(go, SWT.CHECK);
        prepare(slate, "&Slate", SWT.F9, "go:slate", window::toggleSlate);
        slate.setSelection(true);
        item(go, "&Next part of the window", SWT.F6, "go:part", () -> window.nextPart(true));
        item(go, "Pre&vious part", SWT.MOD2 | SWT.F6, "go:part-back", () -> window.nextPart(false));
        new MenuItem(go, SWT.SEPARATOR);
        item(go, "Day &before", SWT.MOD3 | SWT.ARROW_LEFT, "go:day-before", () -> step(-1));
        item(go, "Day &after", SWT.MOD3 | SWT.ARROW_RIGHT, "go:day-after", () -> step(1));
        item(go, "&Today", SWT.MOD3 | SWT.HOME, "go:today", () -> step(-Days.SPAN));
        new MenuItem(go, SWT.SEPARATOR);
        goFixed = go.getItemCount();
        Menu help = menu("&Help");
        item(help, "&Keys", SWT.F1, "help:keys", this::showKeys);
        history(BookWatch.View.NONE);
        shell.setMenuBar(bar);
    }

    /** Shows what can be taken back and done again. */
    void history(BookWatch.View view) {
        undo.setText("&Undo" + view.undoable().map(label -> " " + label).orElse("") + tab(SWT.MOD1 | 'Z'));
        undo.setEnabled(view.undoable().isPresent() && view.readOnly().isEmpty());
        redo.setText("&Redo" + view.redoable().map(label -> " " + label).orElse("") + tab(SWT.MOD1 | SWT.MOD2 | 'Z'));
        redo.setEnabled(view.redoable().isPresent() && view.readOnly().isEmpty());
    }

    void slateShown(boolean shown) {
        slate.setSelection(shown);
    }

    /** Lists the stations, the first nine with a digit as key. */
    void stations(List<StationPlace> places) {
        while (go.getItemCount() > goFixed) {
            go.getItem(goFixed).dispose();
        }
        keys.removeIf(row -> row.id().startsWith("go:station:"));
        for (int at = 0; at < places.size(); at++) {
            StationPlace place = places.get(at);
            int key = at < 9 ? SWT.MOD1 | '1' + at : 0;
            item(go, place.name(), key, "go:station:" + place.id(), () -> window.openStation(place.id()));
        }
    }

    /** Lists what can be done on the bench. */
    void actions(List<BenchAction> newActions) {
        actions = newActions;
        for (MenuItem old : bench.getItems()) {
            old.dispose();
        }
        for (BenchAction action : actions) {
            MenuItem item = new MenuItem(bench, SWT.PUSH);
            item.setText(action.label() + (action.key() == 0 ? "" : tab(action.key())));
            item.setData("id", "menu:" + action.id());
            item.setEnabled(ActionBar.possible(action));
            if (KeyText.safeEverywhere(action.key())) {
                item.setAccelerator(action.key());
            }
            item.addListener(SWT.Selection, event -> action.run().run());
        }
    }

    private void showKeys() {
        List<KeyHelp.Row> rows = new ArrayList<>(keys);
        actions.stream()
                .filter(action -> action.key() != 0)
                .map(action ->
                        new KeyHelp.Row("bench:" + action.id(), KeyText.of(action.key()), action.label(), "This bench"))
                .forEach(rows::add);
        KeyHelp.show(shell, rows);
    }

    private void step(int by) {
        window.days().pick(window.days().picked().plusDays(by));
    }

    private Menu menu(String name) {
        MenuItem head = new MenuItem(bar, SWT.CASCADE);
        head.setText(name);
        Menu menu = new Menu(shell, SWT.DROP_DOWN);
        head.setMenu(menu);
        return menu;
    }

    private MenuItem item(Menu menu, String label, int key, String id, Runnable run) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        prepare(item, label, key, id, run);
        return item;
    }

    private void prepare(MenuItem item, String label, int key, String id, Runnable run) {
        item.setText(key == 0 ? label : label + tab(key));
        item.setAccelerator(key);
        item.setData("id", id);
        item.addListener(SWT.Selection, event -> run.run());
        if (key != 0) {
            keys.add(new KeyHelp.Row(id, KeyText.of(key), label.replace("&", "").replace("\u2026", ""), "Everywhere"));
        }
    }

    private static String tab(int key) {
        return "\t" + KeyText.of(key);
    }
}
