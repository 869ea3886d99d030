package etamine.checks.product;

import java.lang.reflect.Array;
import java.lang.reflect.InvocationTargetException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Looks into the open window from outside. The toolkit's classes belong to the bundles, so they are called by name, and
 * always on the window's own thread.
 */
final class ScreenView {
    private static final int SELECTION = 13;

    private final Object display;
    private final ClassLoader toolkit;

    private ScreenView(Object display) {
        this.display = display;
        this.toolkit = display.getClass().getClassLoader();
    }

    /** The window on that thread, once it is shown. */
    static ScreenView of(Suite suite, Thread thread) throws Exception {
        Class<?> type = suite.bundle("org.eclipse.swt").loadClass("org.eclipse.swt.widgets.Display");
        AtomicReference<Object> found = new AtomicReference<>();
        await("a window", () -> {
            found.set(type.getMethod("findDisplay", Thread.class).invoke(null, thread));
            return found.get() != null && new ScreenView(found.get()).isOpen();
        });
        return new ScreenView(found.get());
    }

    /** Waits until it holds; the window works while the test waits. */
    static void await(String what, Callable<Boolean> condition) throws Exception {
        long end = System.nanoTime() + Duration.ofSeconds(60).toNanos();
        while (!condition.call()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("Waited a minute for " + what + " in vain.");
            }
            Thread.sleep(50);
        }
    }

    private boolean isOpen() throws Exception {
        try {
            return onItsThread(() -> shell().isPresent());
        } catch (InvocationTargetException stillBeingMade) {
            return false; // another thread may find a display before it is whole
        }
    }

    /** The stations on the rail, as ids. */
    List<String> stations() throws Exception {
        return onItsThread(() -> {
            List<String> ids = new ArrayList<>();
            for (Object item : items()) {
                ids.add(String.valueOf(data(item)).replace("station:", ""));
            }
            return ids;
        });
    }

    /** Picks a station as a click would. */
    void pick(String station) throws Exception {
        onItsThread(() -> {
            List<Object> items = items();
            for (int at = 0; at < items.size(); at++) {
                if (("station:" + station).equals(data(items.get(at)))) {
                    Object rail = rail();
                    rail.getClass().getMethod("setSelection", int.class).invoke(rail, at);
                    Class<?> event = toolkit.loadClass("org.eclipse.swt.widgets.Event");
                    rail.getClass()
                            .getMethod("notifyListeners", int.class, event)
                            .invoke(rail, SELECTION, event.getConstructor().newInstance());
                    return true;
                }
            }
            throw new AssertionError("No station " + station + " on the rail");
        });
    }

    /** Every text that can be seen in the window. */
    List<String> texts() throws Exception {
        return onItsThread(() -> {
            List<String> texts = new ArrayList<>();
            for (Object control : visible(shell().orElseThrow())) {
                text(control).ifPresent(texts::add);
            }
            return texts;
        });
    }

    /** The bench's title. */
    String title() throws Exception {
        return onItsThread(() -> {
            for (Object control : visible(shell().orElseThrow())) {
                if ("bench:title".equals(data(control))) {
                    return text(control).orElse("");
                }
            }
            return "";
        });
    }

    void close() throws Exception {
        onItsThread(() -> Suite.call(shell().orElseThrow(), "close"));
    }

    private Optional<Object> shell() throws Exception {
        Object shells = display.getClass().getMethod("getShells").invoke(display);
        return Array.getLength(shells) == 0 ? Optional.empty() : Optional.of(Array.get(shells, 0));
    }

    private Object rail() throws Exception {
        for (Object control : visible(shell().orElseThrow())) {
            if ("stations".equals(data(control))) {
                return control;
            }
        }
        throw new AssertionError("The window has no list of stations");
    }

    private List<Object> items() throws Exception {
        return List.of((Object[]) Suite.call(rail(), "getItems"));
    }

    private static Object data(Object widget) throws Exception {
        return widget.getClass().getMethod("getData", String.class).invoke(widget, "id");
    }

    private static Optional<String> text(Object control) throws Exception {
        for (var method : control.getClass().getMethods()) {
            if (method.getName().equals("getText") && method.getParameterCount() == 0) {
                return Optional.of((String) method.invoke(control));
            }
        }
        return Optional.empty();
    }

    private List<Object> visible(Object control) throws Exception {
        List<Object> found = new ArrayList<>();
        collect(control, found);
        return found;
    }

    private void collect(Object control, List<Object> found) throws Exception {
        if (!(boolean) Suite.call(control, "isVisible")) {
            return;
        }
        found.add(control);
        if (toolkit.loadClass("org.eclipse.swt.widgets.Composite").isInstance(control)) {
            for (Object child : (Object[]) Suite.call(control, "getChildren")) {
                collect(child, found);
            }
        }
    }

    private <T> T onItsThread(Callable<T> work) throws Exception {
        AtomicReference<T> result = new AtomicReference<>();
        AtomicReference<Throwable> failure = new AtomicReference<>();
        Runnable task = () -> {
            try {
                result.set(work.call());
            } catch (Exception | AssertionError e) {
                failure.set(e);
            }
        };
        display.getClass().getMethod("syncExec", Runnable.class).invoke(display, task);
        if (failure.get() != null) {
            throw new AssertionError("In the window: " + failure.get(), failure.get());
        }
        return result.get();
    }
}
