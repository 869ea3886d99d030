package etamine.launcher;

import java.util.List;
import org.osgi.framework.Bundle;

/** Loads what any window needs, with its native library, while the bundles start on another thread. */
final class Toolkit {
    private static final String BUNDLE = "org.eclipse.swt";
    private static final List<String> CLASSES = List.of(
            "org.eclipse.swt.widgets.Display",
            "org.eclipse.swt.widgets.Shell",
            "org.eclipse.swt.widgets.Canvas",
            "org.eclipse.swt.widgets.Label",
            "org.eclipse.swt.widgets.Menu",
            "org.eclipse.swt.widgets.Table",
            "org.eclipse.swt.graphics.GC",
            "org.eclipse.swt.layout.GridLayout",
            "org.eclipse.swt.custom.SashForm");

    private Toolkit() {}

    /** Never fails: the window loads whatever is missing here, or says better what is wrong. */
    static void load(List<Bundle> bundles) {
        bundles.stream()
                .filter(bundle -> BUNDLE.equals(bundle.getSymbolicName()))
                .forEach(bundle -> CLASSES.forEach(name -> load(bundle, name)));
    }

    private static void load(Bundle bundle, String name) {
        try {
            Class<?> type = bundle.loadClass(name);
            Class.forName(name, true, type.getClassLoader());
        } catch (ClassNotFoundException | LinkageError e) {
            // the window will meet it where it can be explained
        }
    }
}
