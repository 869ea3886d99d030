package etamine.documents.internal;

import etamine.documents.Drawing;
import etamine.documents.Ink;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;

/** A drawing as SVG within a page of HTML. */
final class Svg {
    private static final double CHARACTER = 0.55;

    private Svg() {}

    static String of(Drawing drawing) {
        String size = number(drawing.width()) + " " + number(drawing.height());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 " + size + "\" width=\""
                + number(drawing.width()) + "pt\"><title>" + HtmlText.escape(drawing.title()) + "</title>"
                + drawing.shapes().stream().map(Svg::shape).collect(Collectors.joining())
                + "</svg>";
    }

    private static String shape(Drawing.Shape shape) {
        if (shape instanceof Drawing.Box box) {
            return "<rect" + at("x", box.x()) + at("y", box.y()) + at("width", box.width()) + at("height", box.height())
                    + paint(box.paint()) + "/>";
        }
        if (shape instanceof Drawing.Line line) {
            return "<line" + at("x1", line.fromX()) + at("y1", line.fromY()) + at("x2", line.toX())
                    + at("y2", line.toY()) + paint(line.paint()) + "/>";
        }
        if (shape instanceof Drawing.Dot dot) {
            return "<circle" + at("cx", dot.x()) + at("cy", dot.y()) + at("r", dot.radius()) + paint(dot.paint())
                    + "/>";
        }
        if (shape instanceof Drawing.Outline outline) {
            String path = outline.stretches().stream().map(Svg::stretch).collect(Collectors.joining());
            return "<path d=\"" + path + "\"" + paint(outline.paint()) + "/>";
        }
        return label((Drawing.Label) shape);
    }

    private static String stretch(Drawing.Stretch stretch) {
        if (stretch instanceof Drawing.Move move) {
            return "M" + numbers(move.x(), move.y());
        }
        if (stretch instanceof Drawing.Straight straight) {
            return "L" + numbers(straight.x(), straight.y());
        }
        if (stretch instanceof Drawing.Curve c) {
            return "C" + numbers(c.firstX(), c.firstY(), c.secondX(), c.secondY(), c.x(), c.y());
        }
        return "Z";
    }

    private static String label(Drawing.Label label) {
        Drawing.Type type = label.type();
        String anchor = switch (type.align()) {
            case LEFT -> "";
            case CENTRE -> " text-anchor=\"middle\"";
            case RIGHT -> " text-anchor=\"end\"";
        };
        return "<text" + at("x", label.x()) + at("y", label.y()) + at("font-size", type.size()) + anchor
                + (type.bold() ? " font-weight=\"bold\"" : "") + " fill=\"" + colour(type.ink()) + "\">"
                + HtmlText.escape(shortened(label)) + "</text>";
    }

    /** The browser's font is not known here, so a usual width of its characters decides. */
    private static String shortened(Drawing.Label label) {
        String text = label.text().replace('\n', ' ');
        int room = (int) (label.type().widest() / (label.type().size() * CHARACTER));
        return label.type().widest() <= 0 || text.codePointCount(0, text.length()) <= room
                ? text
                : text.substring(0, text.offsetByCodePoints(0, Math.max(0, room - 1)))
                                .stripTrailing() + "…";
    }

    private static String paint(Drawing.Paint paint) {
        return " fill=\"" + paint.fill().map(Svg::colour).orElse("none") + "\""
                + paint.line()
                        .map(line -> " stroke=\"" + colour(line) + "\"" + at("stroke-width", paint.thickness()))
                        .orElse("");
    }

    private static String colour(Ink ink) {
        return String.format("#%06x", ink.rgb());
    }

    private static String at(String attribute, double value) {
        return " " + attribute + "=\"" + number(value) + "\"";
    }

    private static String numbers(double... values) {
        StringBuilder list = new StringBuilder();
        for (double value : values) {
            list.append(list.isEmpty() ? "" : " ").append(number(value));
        }
        return list.toString();
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
