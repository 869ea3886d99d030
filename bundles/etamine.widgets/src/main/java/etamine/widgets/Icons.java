package etamine.widgets;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageDataProvider;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/**
 * The program's line icons by name, drawn in a colour of the palette and sharp at every zoom. A name without a drawing
 * gives a dot, so that a station with a name of its own still has an icon. Images are freed with the display.
 */
public final class Icons {
    private static final String KEY = "etamine.icons";
    private static final Map<String, String> OTHER_NAMES =
            Map.of("catalogue", "suppliers", "inventory", "stock", "diary", "covers", "ordering", "orders");

    private static final PaletteData RGB_PARTS = new PaletteData(0xff0000, 0xff00, 0xff);

    private Icons() {}

    /** An icon of 16 units in the colour of text. */
    public static Image small(Control control, String name) {
        return image(control.getDisplay(), name, 16, Palette.of(control).ink());
    }

    /** An icon of 24 units in the colour of text. */
    public static Image large(Control control, String name) {
        return image(control.getDisplay(), name, 24, Palette.of(control).ink());
    }

    /** An icon of 16 units in a tone. */
    public static Image small(Control control, String name, Tone tone) {
        return image(control.getDisplay(), name, 16, Palette.of(control).text(tone));
    }

    /** An icon of any size in any colour of the palette. */
    public static Image image(Display display, String name, int size, Color color) {
        RGB rgb = color.getRGB();
        String key = name + "/" + size + "/" + rgb;
        return kept(display).images.computeIfAbsent(key, unused -> draw(display, name, size, rgb));
    }

    /** Nothing, of that size: keeps the room of an icon. */
    static Image blank(Display display, int size) {
        return kept(display).images.computeIfAbsent("/" + size, unused -> {
            ImageDataProvider provider = zoom -> {
                ImageData data = new ImageData(size * zoom / 100, size * zoom / 100, 24, RGB_PARTS);
                data.alphaData = new byte[data.width * data.height];
                return data;
            };
            return new Image(display, provider);
        });
    }

    /** Whether there is a drawing of that name. */
    public static boolean exists(String name) {
        return Icons.class.getResource(path(name)) != null;
    }

    private static Kept kept(Display display) {
        if (display.getData(KEY) instanceof Kept known) {
            return known;
        }
        Kept kept = new Kept(new HashMap<>());
        display.setData(KEY, kept);
        display.disposeExec(() -> kept.images.values().forEach(Image::dispose));
        return kept;
    }

    private static Image draw(Display display, String name, int size, RGB rgb) {
        String svg = source(exists(name) ? name : "dot")
                .replace("currentColor", String.format("#%02x%02x%02x", rgb.red, rgb.green, rgb.blue));
        ImageDataProvider provider = zoom -> raster(svg, size * zoom / 100);
        return new Image(display, provider);
    }

    private static ImageData raster(String svg, int pixels) {
        String sized = svg.replace("width=\"24\" height=\"24\"", "width=\"" + pixels + "\" height=\"" + pixels + "\"");
        return new ImageData(new ByteArrayInputStream(sized.getBytes(StandardCharsets.UTF_8)));
    }

    private static String source(String name) {
        try (InputStream in = Icons.class.getResourceAsStream(path(name))) {
            if (in == null) {
                throw new IllegalArgumentException("There is no drawing of " + name + ".");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static String path(String name) {
        return "icons/" + OTHER_NAMES.getOrDefault(name, name) + ".svg";
    }

    private record Kept(Map<String, Image> images) {}
}
