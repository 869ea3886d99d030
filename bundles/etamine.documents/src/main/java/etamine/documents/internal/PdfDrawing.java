package etamine.documents.internal;

import etamine.documents.Align;
import etamine.documents.Drawing;
import etamine.documents.Ink;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/** Draws shapes on a page whose origin is the picture's upper left corner; y is turned here, so that text stands. */
final class PdfDrawing {
    private static final double ROUND = 0.5522847498;

    private final PDPageContentStream to;
    private final PdfText text;

    private PdfDrawing(PDPageContentStream to, PdfText text) {
        this.to = to;
        this.text = text;
    }

    static void draw(Drawing drawing, PDPageContentStream to, PdfText text) throws IOException {
        PdfDrawing pen = new PdfDrawing(to, text);
        for (Drawing.Shape shape : drawing.shapes()) {
            pen.shape(shape);
        }
    }

    private void shape(Drawing.Shape shape) throws IOException {
        if (shape instanceof Drawing.Box box) {
            to.addRect(f(box.x()), f(-box.y() - box.height()), f(box.width()), f(box.height()));
            paint(box.paint());
        } else if (shape instanceof Drawing.Line line) {
            move(line.fromX(), line.fromY());
            straight(line.toX(), line.toY());
            paint(line.paint());
        } else if (shape instanceof Drawing.Dot dot) {
            circle(dot);
            paint(dot.paint());
        } else if (shape instanceof Drawing.Outline outline) {
            for (Drawing.Stretch stretch : outline.stretches()) {
                stretch(stretch);
            }
            paint(outline.paint());
        } else if (shape instanceof Drawing.Label label) {
            label(label);
        }
    }

    private void stretch(Drawing.Stretch stretch) throws IOException {
        if (stretch instanceof Drawing.Move move) {
            move(move.x(), move.y());
        } else if (stretch instanceof Drawing.Straight straight) {
            straight(straight.x(), straight.y());
        } else if (stretch instanceof Drawing.Curve curve) {
            to.curveTo(
                    f(curve.firstX()),
                    f(-curve.firstY()),
                    f(curve.secondX()),
                    f(-curve.secondY()),
                    f(curve.x()),
                    f(-curve.y()));
        } else {
            to.closePath();
        }
    }

    private void circle(Drawing.Dot dot) throws IOException {
        double r = dot.radius();
        double k = r * ROUND;
        move(dot.x() + r, dot.y());
        stretch(arc(dot, r, k, k, r, 0, r));
        stretch(arc(dot, -k, r, -r, k, -r, 0));
        stretch(arc(dot, -r, -k, -k, -r, 0, -r));
        stretch(arc(dot, k, -r, r, -k, r, 0));
        to.closePath();
    }

    private static Drawing.Curve arc(Drawing.Dot dot, double... by) {
        return new Drawing.Curve(
                dot.x() + by[0], dot.y() + by[1], dot.x() + by[2], dot.y() + by[3], dot.x() + by[4], dot.y() + by[5]);
    }

    private void paint(Drawing.Paint paint) throws IOException {
        if (paint.fill().isPresent()) {
            Ink fill = paint.fill().get();
            to.setNonStrokingColor(share(fill.red()), share(fill.green()), share(fill.blue()));
        }
        if (paint.line().isPresent()) {
            Ink line = paint.line().get();
            to.setStrokingColor(share(line.red()), share(line.green()), share(line.blue()));
            to.setLineWidth(f(paint.thickness()));
        }
        if (paint.fill().isPresent() && paint.line().isPresent()) {
            to.fillAndStroke();
        } else if (paint.fill().isPresent()) {
            to.fill();
        } else {
            to.stroke();
        }
    }

    private void label(Drawing.Label label) throws IOException {
        Drawing.Type type = label.type();
        float size = f(type.size());
        String shown = type.widest() > 0
                ? text.shortened(label.text(), size, f(type.widest()))
                : label.text().replace('\n', ' ');
        float back = type.align() == Align.LEFT ? 0 : text.width(shown, size) / (type.align() == Align.CENTRE ? 2 : 1);
        Ink ink = type.ink();
        to.setNonStrokingColor(share(ink.red()), share(ink.green()), share(ink.blue()));
        to.setStrokingColor(share(ink.red()), share(ink.green()), share(ink.blue()));
        Matrix at = Matrix.getTranslateInstance(f(label.x()) - back, f(-label.y()));
        new TextPen(to, text).show(shown, at, new Type(size, type.bold()));
    }

    private void move(double x, double y) throws IOException {
        to.moveTo(f(x), f(-y));
    }

    private void straight(double x, double y) throws IOException {
        to.lineTo(f(x), f(-y));
    }

    private static float share(int eightBits) {
        return eightBits / 255f;
    }

    private static float f(double value) {
        return (float) value;
    }
}
