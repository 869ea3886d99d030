package etamine.widgets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/**
 * Pages of one bench: a strip of their names, one page at a time below it. A page is built when it is first shown.
 * Ctrl+Page Up and Ctrl+Page Down go from page to page, also from what stands beside the pages.
 */
public final class Pages extends Composite {
    private final Composite strip;
    private final Composite stage;
    private final StackLayout stack = new StackLayout();
    private final Map<String, Page> pages = new LinkedHashMap<>();
    private final List<Consumer<String>> onShow = new ArrayList<>();
    private Consumer<String> focus = this::first;
    private String shown = "";

    private static final class Page {
        private final Button name;
        private final Function<Composite, ? extends Control> build;
        private Control control;

        Page(Button name, Function<Composite, ? extends Control> build) {
            this.name = name;
            this.build = build;
        }
    }

    /** No pages yet. */
    public Pages(Composite parent) {
        super(parent, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        strip = new Composite(this, SWT.NONE);
        RowLayout names = new RowLayout(SWT.HORIZONTAL);
        names.marginTop = 2;
        names.marginBottom = 2;
        names.spacing = 2;
        strip.setLayout(names);
        strip.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        stage = new Composite(this, SWT.NONE);
        stage.setLayout(stack);
        stage.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        followKeys();
    }

    /**
     * Adds a page; the first one added is shown.
     *
     * @param id its stable name
     * @param name its name for people
     * @param build makes its one control when it is first shown
     */
    public Pages page(String id, String name, Function<Composite, ? extends Control> build) {
        Button button = Spoken.id(new Button(strip, SWT.TOGGLE | SWT.FLAT), "page:" + id);
        button.setText(name);
        button.addListener(SWT.Selection, event -> show(id));
        pages.put(id, new Page(button, build));
        if (pages.size() == 1) {
            show(id);
        }
        return this;
    }

    /** Shows a page; an unknown id changes nothing. */
    public void show(String id) {
        Page page = pages.get(id);
        if (page == null) {
            return;
        }
        pages.forEach((each, other) -> other.name.setSelection(each.equals(id)));
        boolean another = !id.equals(shown);
        shown = id;
        if (page.control == null) {
            page.control = page.build.apply(stage);
        }
        stack.topControl = page.control;
        stage.layout();
        if (another) {
            onShow.forEach(listener -> listener.accept(id));
        }
    }

    /** The id of the page shown; empty while there is none. */
    public String shown() {
        return shown;
    }

    /** Whether the keyboard is in the page shown. */
    public boolean hasKeyboard() {
        Control now = getDisplay().getFocusControl();
        return now != null && holds(stage, now);
    }

    /** Calls the listener with the id of each page that comes up after this. */
    public Pages onShow(Consumer<String> listener) {
        onShow.add(listener);
        return this;
    }

    /** Puts the keyboard into a page that keys have turned to, by its id; else its first control gets it. */
    public Pages focusing(Consumer<String> how) {
        focus = how;
        return this;
    }

    private void first(String id) {
        pages.get(id).control.setFocus();
    }

    private void followKeys() {
        org.eclipse.swt.widgets.Listener keys = this::turn;
        getDisplay().addFilter(SWT.KeyDown, keys);
        addListener(SWT.Dispose, event -> event.display.removeFilter(SWT.KeyDown, keys));
    }

    private void turn(Event event) {
        boolean down = event.keyCode == SWT.PAGE_DOWN;
        boolean ours = event.stateMask == SWT.MOD1 && (down || event.keyCode == SWT.PAGE_UP);
        if (!ours
                || !isVisible()
                || pages.isEmpty()
                || !(event.widget instanceof Control control)
                || !event.doit
                || !holds(getParent(), control)) {
            return;
        }
        List<String> ids = List.copyOf(pages.keySet());
        boolean within = holds(stage, control);
        show(ids.get(Math.floorMod(ids.indexOf(shown) + (down ? 1 : -1), ids.size())));
        if (holds(this, control)) {
            pages.get(shown).name.setFocus();
        }
        if (within) {
            focus.accept(shown);
        }
        event.doit = false;
    }

    private static boolean holds(Composite part, Control control) {
        for (Control at = control; at != null; at = at.getParent()) {
            if (at == part) {
                return true;
            }
        }
        return false;
    }
}
