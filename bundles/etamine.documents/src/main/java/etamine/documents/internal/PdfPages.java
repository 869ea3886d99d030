package etamine.documents.internal;

import etamine.documents.Drawing;
import etamine.documents.Picture;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.util.Matrix;

/** The pages of a document and the place on the present one, in points from the foot. */
final class PdfPages extends Canvas {
    private static final float MARGIN = 50;
    private static final float NUMBER_WIDTH = 60;
    private static final String LACKING =
            "Boxes stand for characters that no font on this computer has; install a font that has them.";

    private final PDDocument document;
    private final PDRectangle sheet;
    private final Foot foot;
    private final List<String> footLines;
    private PDPageContentStream content;
    private float y;

    /** What stands on every page outside its text. */
    record Foot(String text, String running, Type type) {}

    PdfPages(PDDocument document, PDRectangle sheet, PdfText text, Foot foot) throws IOException {
        super(text, MARGIN, sheet.getWidth() - 2 * MARGIN);
        this.document = document;
        this.sheet = sheet;
        this.foot = foot;
        float room = sheet.getWidth() - 2 * MARGIN - NUMBER_WIDTH;
        this.footLines = text.wrap(foot.text(), foot.type().size(), room);
        this.content = open();
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
        return y - height >= bottom() - 0.01f;
    }

    @Override
    float pageHeight() {
        return top() - bottom();
    }

    @Override
    void next() throws IOException {
        if (y < top() - 0.01f) {
            content.close();
            content = open();
        }
    }

    @Override
    void show(String line, float x, Type type) throws IOException {
        new TextPen(content, text()).show(line, Matrix.getTranslateInstance(x, y), type);
    }

    @Override
    void showUpright(String line, float x, Type type) throws IOException {
        new TextPen(content, text()).show(line, Matrix.getRotateInstance(Math.PI / 2, x, y + 3), type);
    }

    @Override
    void line(float fromX, float fromY, float toX, float toY, float thickness) throws IOException {
        content.setLineWidth(thickness);
        content.moveTo(fromX, fromY);
        content.lineTo(toX, toY);
        content.stroke();
    }

    @Override
    void draw(Drawing drawing, float scale) throws IOException {
        content.saveGraphicsState();
        content.transform(new Matrix(scale, 0, 0, scale, left(), y));
        PdfDrawing.draw(drawing, content, text());
        content.restoreGraphicsState();
    }

    @Override
    void photo(Picture picture, float wide, float high) throws IOException {
        content.drawImage(JPEGFactory.createFromByteArray(document, picture.bytes()), left(), y, wide, high);
    }

    /** Puts the foot on every page and closes the last. */
    void finish() throws IOException {
        content.close();
        int pages = document.getNumberOfPages();
        for (int i = 0; i < pages; i++) {
            try (PDPageContentStream stream = new PDPageContentStream(
                    document, document.getPage(i), PDPageContentStream.AppendMode.APPEND, true, true)) {
                outside(new TextPen(stream, text()), i, pages);
            }
        }
    }

    private void outside(TextPen pen, int page, int pages) throws IOException {
        Type type = foot.type();
        List<String> lines = new ArrayList<>(footLines);
        if (text().lacksCharacters() && page == pages - 1) {
            lines.add(LACKING);
        }
        String number = (page + 1) + " / " + pages;
        for (int i = 0; i < lines.size(); i++) {
            float at = MARGIN - 14 + type.line() * (footLines.size() - 1 - i);
            pen.show(lines.get(i), Matrix.getTranslateInstance(MARGIN, at), type);
        }
        float x = sheet.getWidth() - MARGIN - text().width(number, type.size());
        pen.show(number, Matrix.getTranslateInstance(x, MARGIN - 14), type);
        if (page > 0) {
            String running = text().shortened(foot.running(), type.size(), sheet.getWidth() - 2 * MARGIN);
            pen.show(running, Matrix.getTranslateInstance(MARGIN, sheet.getHeight() - MARGIN + 14), type);
        }
    }

    private float top() {
        return sheet.getHeight() - MARGIN;
    }

    private float bottom() {
        return MARGIN + foot.type().line() * (footLines.size() - 1) + 4;
    }

    private PDPageContentStream open() throws IOException {
        PDPage page = new PDPage(sheet);
        document.addPage(page);
        y = top();
        return new PDPageContentStream(document, page);
    }
}
