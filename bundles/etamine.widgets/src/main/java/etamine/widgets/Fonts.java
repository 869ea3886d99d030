package etamine.widgets;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** The desktop's own font in the few sizes and weights the program uses; freed with the display. */
public final class Fonts {
    private static final String KEY = "etamine.fonts";

    private Fonts() {}

    /** The font of ordinary text. */
    public static Font plain(Control control) {
        return control.getDisplay().getSystemFont();
    }

    /** Ordinary size, heavier. */
    public static Font bold(Control control) {
        return font(control.getDisplay(), 1.0, SWT.BOLD);
    }

    /** Heading of a bench. */
    public static Font heading(Control control) {
        return font(control.getDisplay(), 1.35, SWT.BOLD);
    }

    /** A figure that should be seen first. */
    public static Font figure(Control control) {
        return font(control.getDisplay(), 1.8, SWT.NORMAL);
    }

    /** Labels and remarks. */
    public static Font small(Control control) {
        return font(control.getDisplay(), 0.88, SWT.NORMAL);
    }

    private static Font font(Display display, double size, int style) {
        if (!(display.getData(KEY) instanceof Kept)) {
            Kept kept = new Kept(new HashMap<>());
            display.setData(KEY, kept);
            display.disposeExec(() -> kept.fonts.values().forEach(Font::dispose));
        }
        Kept kept = (Kept) display.getData(KEY);
        return kept.fonts.computeIfAbsent(size + "/" + style, key -> make(display, size, style));
    }

    private static Font make(Display display, double size, int style) {
        FontData[] data = display.getSystemFont().getFontData();
        for (FontData each : data) {
            each.setHeight((int) Math.max(6, Math.round(each.getHeight() * size)));
            each.setStyle(style);
        }
        return new Font(display, data);
    }

    private record Kept(Map<String, Font> fonts) {}
}
