package etamine.documents.internal;

import etamine.documents.Paper;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Lays one paper out, page after page. */
final class PdfLayout {
    private final Paper paper;
    private final InstalledFonts fonts;

    PdfLayout(Paper paper, InstalledFonts fonts) {
        this.paper = paper;
        this.fonts = fonts;
    }

    /** Fills an empty document. */
    void on(PDDocument document) throws IOException {
        // Made from the content, so that the same paper gives the same bytes on every run.
        document.setDocumentId((long) HtmlPage.of(paper).hashCode());
        document.getDocumentInformation().setTitle(paper.title());
        Type.Sizes sizes = Type.Sizes.of(paper.sheet().print());
        PdfPages.Foot foot = new PdfPages.Foot(paper.footer(), paper.title(), sizes.foot());
        PdfPages pages = new PdfPages(document, sheet(), new PdfText(document, fonts), foot);
        PdfBlocks blocks = new PdfBlocks(sizes);
        blocks.lines(pages, paper.title(), sizes.title());
        if (!paper.subtitle().isEmpty()) {
            blocks.lines(pages, paper.subtitle(), sizes.subtitle());
        }
        pages.down(sizes.gap(10));
        blocks.blocks(pages, paper.blocks());
        pages.finish();
    }

    private PDRectangle sheet() {
        PDRectangle upright = paper.size() == Paper.Size.A4 ? PDRectangle.A4 : PDRectangle.LETTER;
        return paper.sheet().landscape() ? new PDRectangle(upright.getHeight(), upright.getWidth()) : upright;
    }
}
