package etamine.documents.internal;

import etamine.documents.Drawing;
import etamine.documents.Picture;

/** A page without an end on which nothing is drawn: laying blocks out on it tells how tall they are. */
final class Endless extends Canvas {
    private final float pageHeight;
    private float y;

    Endless(PdfText text, float width, float pageHeight) {
        super(text, 0, width);
        this.pageHeight = pageHeight;
    }

    float height() {
        return -y;
    }

    @Override
    float y() {
        return y;
    }

    @Override
    void to(float place) {
        y = place;
    }

    @Override
    boolean fits(float height) {
        return true;
    }

    @Override
    float pageHeight() {
        return pageHeight;
    }

    @Override
    void next() {
        // has no end to turn at
    }

    @Override
    void show(String line, float x, Type type) {
        // only measures
    }

    @Override
    void showUpright(String line, float x, Type type) {
        // only measures
    }

    @Override
    void line(float fromX, float fromY, float toX, float toY, float thickness) {
        // only measures
    }

    @Override
    void photo(Picture picture, float wide, float high) {
        // only measures
    }

    @Override
    void draw(Drawing drawing, float scale) {
        // only measures
    }
}
