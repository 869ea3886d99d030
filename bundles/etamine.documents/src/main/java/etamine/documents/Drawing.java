package etamine.documents;

import java.util.List;
import java.util.Optional;

/**
 * A picture made of shapes, printed as shapes and not as dots. Lengths are points of 1/72 inch from the upper left
 * corner, x to the right and y down. A picture wider or taller than the page is made smaller as a whole; nothing is cut.
 *
 * @param title what it shows, read out to those who cannot see it
 * @param width the width of the picture, more than 0
 * @param height its height, more than 0
 * @param shapes the shapes, each over those before it
 */
public record Drawing(String title, double width, double height, List<Shape> shapes) implements Block {

    /** Copies the list and checks the size. */
    public Drawing {
        shapes = List.copyOf(shapes);
        if (!(width > 0 && height > 0 && width < 1e6 && height < 1e6)) {
            throw new IllegalArgumentException("A drawing has a width and a height of more than 0.");
        }
    }

    /** One shape. */
    public sealed interface Shape {}

    /**
     * How a shape is painted: its inside, its outline, both.
     *
     * @param fill the colour of the inside
     * @param line the colour of the outline
     * @param thickness the outline's thickness in points
     */
    public record Paint(Optional<Ink> fill, Optional<Ink> line, double thickness) {

        /** The inside only. */
        public static Paint filled(Ink fill) {
            return new Paint(Optional.of(fill), Optional.empty(), 0);
        }

        /** The outline only. */
        public static Paint outlined(Ink line, double thickness) {
            return new Paint(Optional.empty(), Optional.of(line), thickness);
        }

        /** The inside with a thin outline. */
        public static Paint edged(Ink fill, Ink line) {
            return new Paint(Optional.of(fill), Optional.of(line), 0.5);
        }
    }

    /** A rectangle by its upper left corner and its size. */
    public record Box(double x, double y, double width, double height, Paint paint) implements Shape {}

    /** A straight line from one point to another. */
    public record Line(double fromX, double fromY, double toX, double toY, Paint paint) implements Shape {}

    /** A circle by its middle. */
    public record Dot(double x, double y, double radius, Paint paint) implements Shape {}

    /**
     * Anything else: straight and curved stretches.
     *
     * @param stretches where it goes; the first is a {@link Move}
     * @param paint how it is painted
     */
    public record Outline(List<Stretch> stretches, Paint paint) implements Shape {

        /** Copies the list and checks the beginning. */
        public Outline {
            stretches = List.copyOf(stretches);
            if (!stretches.isEmpty() && !(stretches.get(0) instanceof Move)) {
                throw new IllegalArgumentException("An outline begins with a move.");
            }
        }
    }

    /** Part of an outline. */
    public sealed interface Stretch {}

    /** Begins at a point. */
    public record Move(double x, double y) implements Stretch {}

    /** Goes straight to a point. */
    public record Straight(double x, double y) implements Stretch {}

    /** Goes to a point along a cubic Bézier curve. */
    public record Curve(double firstX, double firstY, double secondX, double secondY, double x, double y)
            implements Stretch {}

    /** Goes straight back to where this part began. */
    public record Close() implements Stretch {}

    /**
     * One line of text.
     *
     * @param x where it begins, has its middle or ends
     * @param y its base line
     * @param text the text
     * @param type how it is set
     */
    public record Label(double x, double y, String text, Type type) implements Shape {}

    /**
     * How text is set.
     *
     * @param size the size of type in points
     * @param align which part of the text is at its place
     * @param bold whether it is heavier
     * @param ink its colour
     * @param widest the width beyond which it is shortened with an ellipsis; 0 for any
     */
    public record Type(double size, Align align, boolean bold, Ink ink, double widest) {

        /** Black text that begins at its place. */
        public static Type of(double size) {
            return new Type(size, Align.LEFT, false, Ink.BLACK, 0);
        }

        /** The same at another edge. */
        public Type at(Align other) {
            return new Type(size, other, bold, ink, widest);
        }

        /** The same in a colour. */
        public Type in(Ink other) {
            return new Type(size, align, bold, other, widest);
        }

        /** The same but heavier. */
        public Type heavy() {
            return new Type(size, align, true, ink, widest);
        }

        /** The same, shortened beyond that width. */
        public Type within(double width) {
            return new Type(size, align, bold, ink, width);
        }
    }
}
