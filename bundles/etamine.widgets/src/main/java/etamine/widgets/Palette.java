package etamine.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/**
 * Every colour of the program: the desktop's own for surfaces and text, and the colour-blind-safe set of Okabe and Ito,
 * "Color Universal Design" (2008), for meaning and charts, darkened or lightened until it can be read on the surface.
 */
public final class Palette {
    private static final String KEY = "etamine.palette";
    private static final double READABLE = 5.0;
    private static final int[][] SERIES = {
        {0, 114, 178}, {230, 159, 0}, {0, 158, 115}, {204, 121, 167}, {86, 180, 233}, {213, 94, 0}, {240, 228, 66}
    };
    private final Display display;
    private final boolean dark;

    private Palette(Display display) {
        this.display = display;
        this.dark = luminance(display.getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB()) < 0.35;
    }

    /** The palette of a control's display. */
    public static Palette of(Control control) {
        return of(control.getDisplay());
    }

    /** The palette of a display; it follows a change of the desktop's theme. */
    public static Palette of(Display display) {
        if (display.getData(KEY) instanceof Palette known) {
            return known;
        }
        Palette palette = new Palette(display);
        if (display.getData(KEY + ".watched") == null) {
            display.setData(KEY + ".watched", Boolean.TRUE);
            display.addListener(SWT.Settings, event -> display.setData(KEY, null));
        }
        display.setData(KEY, palette);
        return palette;
    }

    /** Whether the desktop's theme is dark. */
    public boolean dark() {
        return dark;
    }

    /** The surface that work lies on: tables, fields, the slate. */
    public Color paper() {
        return display.getSystemColor(SWT.COLOR_LIST_BACKGROUND);
    }

    /** Text on paper. */
    public Color ink() {
        return display.getSystemColor(SWT.COLOR_LIST_FOREGROUND);
    }

    /** The surface of the window itself. */
    public Color panel() {
        return display.getSystemColor(SWT.COLOR_WIDGET_BACKGROUND);
    }

    /** Text of less weight, still readable on paper and panel. */
    public Color quiet() {
        return color(readable(mix(ink().getRGB(), paper().getRGB(), 0.34)));
    }

    /** Thin dividing lines. */
    public Color line() {
        return color(mix(ink().getRGB(), panel().getRGB(), 0.80));
    }

    /** What is picked or can be followed: blue. */
    public Color accent() {
        return color(readable(dark ? rgb(SERIES[4]) : rgb(SERIES[0])));
    }

    /** A faint surface under what is picked. */
    public Color wash() {
        return color(mix(accent().getRGB(), paper().getRGB(), dark ? 0.78 : 0.88));
    }

    /** A faint surface under a caution. */
    public Color warnWash() {
        return color(mix(rgb(SERIES[1]), paper().getRGB(), dark ? 0.78 : 0.84));
    }

    /** Text in a tone, readable on paper. */
    public Color text(Tone tone) {
        return switch (tone) {
            case PLAIN -> ink();
            case QUIET -> quiet();
            case GOOD -> color(readable(rgb(SERIES[2])));
            case WARN -> color(readable(dark ? rgb(SERIES[1]) : mix(rgb(SERIES[1]), new RGB(0, 0, 0), 0.35)));
            case BAD -> color(readable(rgb(SERIES[5])));
        };
    }

    /** A filled shape in a tone; at least three to one against paper. */
    public Color fill(Tone tone) {
        return switch (tone) {
            case PLAIN -> color(dark ? rgb(SERIES[4]) : rgb(SERIES[0]));
            case QUIET -> color(mix(ink().getRGB(), paper().getRGB(), 0.55));
            case GOOD -> color(rgb(SERIES[2]));
            case WARN -> color(rgb(SERIES[1]));
            case BAD -> color(rgb(SERIES[5]));
        };
    }

    /** The nth colour of a chart; they repeat after seven, so charts also label their parts. */
    public Color series(int index) {
        return color(rgb(SERIES[Math.floorMod(index, SERIES.length)]));
    }

    /** Black or white, whichever reads better on that surface. */
    public Color on(Color surface) {
        boolean light = luminance(surface.getRGB()) > 0.36;
        return display.getSystemColor(light ? SWT.COLOR_BLACK : SWT.COLOR_WHITE);
    }

    /** The contrast of two colours, 1 to 21, by the definition of WCAG 2.1 (W3C, 2018). */
    public static double contrast(RGB one, RGB other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private RGB readable(RGB wanted) {
        RGB ground = paper().getRGB();
        RGB pole = dark ? new RGB(255, 255, 255) : new RGB(0, 0, 0);
        RGB result = wanted;
        for (double share = 0; contrast(result, ground) < READABLE && share <= 1; share += 0.05) {
            result = mix(wanted, pole, share);
        }
        return result;
    }

    private static double luminance(RGB rgb) {
        return 0.2126 * linear(rgb.red) + 0.7152 * linear(rgb.green) + 0.0722 * linear(rgb.blue);
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static RGB mix(RGB from, RGB to, double share) {
        return new RGB(
                part(from.red, to.red, share), part(from.green, to.green, share), part(from.blue, to.blue, share));
    }

    private static int part(int from, int to, double share) {
        return (int) Math.round(from + (to - from) * share);
    }

    private static RGB rgb(int[] parts) {
        return new RGB(parts[0], parts[1], parts[2]);
    }

    private static Color color(RGB rgb) {
        return new Color(rgb);
    }
}
