package etamine.shell.app.internal;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.eclipse.swt.graphics.Point;
import org.jspecify.annotations.Nullable;

/**
 * How the window starts, from properties of the framework.
 *
 * @param book {@code etamine.book}: the book to open
 * @param demo {@code etamine.demo}: whether a missing book becomes the demo kitchen
 * @param paintFile {@code etamine.paint.file}: where to write the time of the first paint before closing again
 * @param size {@code etamine.window}: width and height, such as {@code 1280x800}
 */
record WindowSettings(Optional<String> book, boolean demo, Optional<Path> paintFile, Optional<Point> size) {

    /** Reads the properties; what is missing or makes no sense is left out. */
    static WindowSettings from(UnaryOperator<@Nullable String> properties) {
        return new WindowSettings(
                given(properties, "etamine.book"),
                given(properties, "etamine.demo").map(Boolean::parseBoolean).orElse(false),
                given(properties, "etamine.paint.file").map(Path::of),
                given(properties, "etamine.window")
                        .filter(text -> text.matches("\\d{3,4}x\\d{3,4}"))
                        .map(WindowSettings::point));
    }

    private static Optional<String> given(UnaryOperator<@Nullable String> properties, String name) {
        return Optional.ofNullable(properties.apply(name)).filter(text -> !text.isBlank());
    }

    private static Point point(String text) {
        String[] parts = text.split("x");
        return new Point(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
    }
}
