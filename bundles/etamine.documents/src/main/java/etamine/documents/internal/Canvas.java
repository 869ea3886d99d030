package etamine.documents.internal;

import etamine.documents.Drawing;
import etamine.documents.Picture;
import java.io.IOException;

/** Where blocks are laid out: a place that moves down, within a left edge and a width, in points. */
abstract class Canvas {
    private final PdfText text;
    private float left;
    private float width;

    /** Work that may fail to write. */
    interface Work {
        void run() throws IOException;
    }

    Canvas(PdfText text, float left, float width) {
        this.text = text;
        this.left = left;
        this.width = width;
    }

    PdfText text() {
        return text;
    }

    float left() {
        return left;
    }

    float width() {
        return width;
    }

    /** Does the work within a narrower stretch of the page. */
    void within(float from, float wide, Work work) throws IOException {
        float keptLeft = left;
        float keptWidth = width;
        left = from;
        width = wide;
        try {
            work.run();
        } finally {
            left = keptLeft;
            width = keptWidth;
        }
    }

    /** How far up from the foot of the sheet the place is. */
    abstract float y();

    /** Goes to a place on the same page. */
    abstract void to(float y);

    abstract boolean fits(float height);

    /** The height that an empty page offers. */
    abstract float pageHeight();

    /** Turns the page, unless it is empty. */
    abstract void next() throws IOException;

    abstract void show(String line, float x, Type type) throws IOException;

    /** Shows a line that reads upwards from the present place. */
    abstract void showUpright(String line, float x, Type type) throws IOException;

    abstract void line(float fromX, float fromY, float toX, float toY, float thickness) throws IOException;

    /** Draws a picture below the present place. */
    abstract void draw(Drawing drawing, float scale) throws IOException;

    /** Shows a picture that stands on the present place. */
    abstract void photo(Picture picture, float wide, float high) throws IOException;

    void down(float by) {
        to(y() - by);
    }

    /** Turns the page unless that much still fits. */
    void need(float height) throws IOException {
        if (!fits(height)) {
            next();
        }
    }

    void rule(float thickness) throws IOException {
        line(left, y(), left + width, y(), thickness);
        down(2);
    }

    void frame(float fromX, float top, float toX, float bottom, float thickness) throws IOException {
        line(fromX, top, toX, top, thickness);
        line(toX, top, toX, bottom, thickness);
        line(toX, bottom, fromX, bottom, thickness);
        line(fromX, bottom, fromX, top, thickness);
    }
}
