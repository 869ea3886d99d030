package etamine.documents.internal;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

/** Writes lines of text on one page. */
final class TextPen {
    private final PDPageContentStream to;
    private final PdfText text;

    TextPen(PDPageContentStream to, PdfText text) {
        this.to = to;
        this.text = text;
    }

    void show(String line, Matrix at, Type type) throws IOException {
        if (line.isEmpty()) {
            return;
        }
        to.beginText();
        // The one font that comes with PDFBox is regular, so a heavier weight is drawn by thickening its outline.
        to.setRenderingMode(type.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        to.setLineWidth(type.size() / 36);
        to.setTextMatrix(at);
        for (PdfText.Run run : text.runs(line)) {
            to.setFont(run.font(), type.size());
            to.showText(run.text());
        }
        to.endText();
    }
}
