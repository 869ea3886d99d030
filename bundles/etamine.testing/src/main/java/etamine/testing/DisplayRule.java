package etamine.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Widget;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * A display for tests of widgets: register it as a static extension. Without a screen the tests fail and say how to get
 * one; they never pass unseen. Shells left open are closed after each test.
 */
public final class DisplayRule implements BeforeAllCallback, AfterEachCallback, AfterAllCallback {
    private static final long PATIENCE = 60_000;
    private Optional<Display> display = Optional.empty();

    @Override
    public void beforeAll(ExtensionContext context) {
        boolean linux =
                System.getProperty("os.name").toLowerCase(java.util.Locale.ROOT).contains("linux");
        if (linux && System.getenv("DISPLAY") == null && System.getenv("WAYLAND_DISPLAY") == null) {
            throw new IllegalStateException("Tests of the window need a screen and there is none: run product/test, "
                    + "or put a virtual one before the command, such as xvfb-run -a mvn package.");
        }
        display = Optional.of(new Display());
    }

    @Override
    public void afterEach(ExtensionContext context) {
        for (Shell shell : display().getShells()) {
            if (!shell.isDisposed()) {
                shell.dispose();
            }
        }
        settle();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        display.ifPresent(Display::dispose);
    }

    /** The display. */
    public Display display() {
        return display.orElseThrow(() -> new IllegalStateException("The display rule has not started."));
    }

    /** A new shell, open, of that size. */
    public Shell shell(int width, int height) {
        Shell shell = new Shell(display(), SWT.SHELL_TRIM);
        shell.setLayout(new org.eclipse.swt.layout.FillLayout());
        shell.setSize(width, height);
        return shell;
    }

    /** Handles what has happened until nothing is left to handle. */
    public void settle() {
        for (int at = 0; at < 500 && display().readAndDispatch(); at++) {
            Thread.onSpinWait();
        }
    }

    /** Handles events until {@code condition} holds; fails after a minute, naming what it waited for. */
    public void until(String what, BooleanSupplier condition) {
        long end = System.currentTimeMillis() + PATIENCE;
        while (!condition.getAsBoolean()) {
            if (System.currentTimeMillis() > end) {
                throw new AssertionError("Waited in vain until " + what + ".");
            }
            if (!display().readAndDispatch()) {
                pause();
            }
        }
        settle();
    }

    /** The widget below {@code root} with that id. */
    public Widget find(Composite root, String id) {
        return all(root).stream()
                .filter(widget -> id.equals(widget.getData("id")))
                .findFirst()
                .orElseThrow(() -> new AssertionError("There is no widget with the id " + id + "."));
    }

    /** The widget below {@code root} with that id, as a type. */
    public <W extends Widget> W find(Composite root, String id, Class<W> type) {
        return type.cast(find(root, id));
    }

    /** Whether there is a widget with that id. */
    public boolean has(Composite root, String id) {
        return all(root).stream().anyMatch(widget -> id.equals(widget.getData("id")));
    }

    /** Acts as if a person had selected the widget. */
    public void select(Widget widget) {
        Event event = new Event();
        event.widget = widget;
        widget.notifyListeners(SWT.Selection, event);
        settle();
    }

    /** Acts as if a person had pressed a key in the widget. */
    public void key(Widget widget, int keyCode, char character, int stateMask) {
        Event event = new Event();
        event.widget = widget;
        event.keyCode = keyCode;
        event.character = character;
        event.stateMask = stateMask;
        widget.notifyListeners(SWT.KeyDown, event);
        settle();
    }

    private static List<Widget> all(Composite root) {
        List<Widget> found = new ArrayList<>();
        found.add(root);
        if (root instanceof ToolBar bar) {
            found.addAll(List.<ToolItem>of(bar.getItems()));
        }
        if (root instanceof Shell shell && shell.getMenuBar() != null) {
            menus(shell.getMenuBar(), found);
        }
        for (Control child : root.getChildren()) {
            if (child instanceof Composite composite) {
                found.addAll(all(composite));
            } else {
                found.add(child);
            }
        }
        return found;
    }

    private static void menus(Menu menu, List<Widget> found) {
        for (MenuItem item : menu.getItems()) {
            found.add(item);
            if (item.getMenu() != null) {
                menus(item.getMenu(), found);
            }
        }
    }

    private static void pause() {
        try {
            Thread.sleep(5);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }
}
