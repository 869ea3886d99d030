package etamine.documents.internal;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** The pages of a document and the place on the present one, in points from the top. */
final class PdfPages {
    private static final float MARGIN = 50;
    private static final float FOOT = 40;

    private final PDDocument document;
    private final PDRectangle sheet;
    private final PdfText text;
    private PDPageContentStream content;
    private float y;

    PdfPages(PDDocument document, PDRectangle sheet, PdfText text) throws IOException {
        this.document = document;
        this.sheet = sheet;
        this.text = text;
        this.content = open();
    }

    PdfText text() {
        return text;
    }

    float left() {
        return MARGIN;
    }

    float width() {
        return sheet.getWidth() - 2 * MARGIN;
    }

    boolean fits(float height) {
        return y - height >= MARGIN + FOOT;
    }

    /** Turns the page unless that much still fits. */
    void need(float height) throws IOException {
        if (!fits(height)) {
            next();
        }
    }

    void down(float by) {
        y -= by;
    }

    void next() throws IOException {
        content.close();
        content = open();
    }

    void show(String line, float x, float size, boolean bold) throws IOException {
        show(content, line, x, y, size, bold);
    }

    void rule(float thickness) throws IOException {
        content.setLineWidth(thickness);
        content.moveTo(MARGIN, y);
        content.lineTo(MARGIN + width(), y);
        content.stroke();
        y -= 2;
    }

    /** Puts the foot on every page and closes the last. */
    void finish(String footer) throws IOException {
        content.close();
        int pages = document.getNumberOfPages();
        for (int i = 0; i < pages; i++) {
            PDPage page = document.getPage(i);
            try (PDPageContentStream foot =
                    new PDPageContentStream(document, page, PDPageContentStream.AppendMode.APPEND, true, true)) {
                String number = (i + 1) + " / " + pages;
                show(foot, footer, MARGIN, MARGIN, 8, false);
                show(foot, number, MARGIN + width() - text.width(number, 8), MARGIN, 8, false);
            }
        }
    }

    private PDPageContentStream open() throws IOException {
        PDPage page = new PDPage(sheet);
        document.addPage(page);
        y = sheet.getHeight() - MARGIN;
        return new PDPageContentStream(document, page);
    }

    private void show(PDPageContentStream to, String line, float x, float at, float size, boolean bold)
            throws IOException {
        to.beginText();
        to.setRenderingMode(PdfLayout.mode(bold));
        to.setLineWidth(size / 36);
        to.newLineAtOffset(x, at);
        for (PdfText.Run run : text.runs(line)) {
            to.setFont(run.font(), size);
            to.showText(run.text());
        }
        to.endText();
    }
}
