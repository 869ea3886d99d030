package etamine.documents.internal;

import etamine.base.Printout;
import etamine.documents.Documents;
import etamine.documents.Paper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** One paper for those who only save or print it; its pages are drawn from the same PDF that is saved. */
final class PaperPrintout implements Printout {
    private final Paper paper;
    private final Documents documents;
    private final InstalledFonts fonts;

    PaperPrintout(Paper paper, Documents documents, InstalledFonts fonts) {
        this.paper = paper;
        this.documents = documents;
        this.fonts = fonts;
    }

    @Override
    public String title() {
        return paper.title();
    }

    @Override
    public void pdf(Path file) throws IOException {
        documents.pdf(paper, file);
    }

    @Override
    public void html(Path file) throws IOException {
        documents.html(paper, file);
    }

    @Override
    public void pages(int dotsPerInch, PageSink sink) throws IOException {
        if (dotsPerInch < 36 || dotsPerInch > 600) {
            throw new IllegalArgumentException("Pages are drawn at 36 to 600 dots per inch.");
        }
        try (PDDocument laidOut = new PDDocument()) {
            new PdfLayout(paper, fonts).on(laidOut);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            laidOut.save(bytes); // fonts are cut down to what is used only on saving
            try (PDDocument saved = Loader.loadPDF(bytes.toByteArray())) {
                draw(saved, dotsPerInch, sink);
            }
        }
    }

    private static void draw(PDDocument document, int dotsPerInch, PageSink sink) throws IOException {
        PDFRenderer renderer = new PDFRenderer(document);
        int pages = document.getNumberOfPages();
        boolean on = true;
        for (int page = 0; page < pages && on; page++) {
            BufferedImage picture = renderer.renderImageWithDPI(page, dotsPerInch, ImageType.RGB);
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(picture, "png", png);
            on = sink.page(page + 1, pages, png.toByteArray());
        }
    }
}
