package etamine.documents.internal;

import etamine.documents.Block;
import etamine.documents.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Lays one paper out, top to bottom, page after page. */
final class PdfLayout {
    private static final float BODY = 9.5f;
    private static final float LEADING = 1.35f;
    private static final float CELL_GAP = 8;
    private static final float LABEL_WIDTH = 110;

    private final Paper paper;

    PdfLayout(Paper paper) {
        this.paper = paper;
    }

    void save(Path file) throws IOException {
        try (PDDocument document = new PDDocument()) {
            // A fixed identifier, so that the same paper gives the same bytes.
            document.setDocumentId(
                    31L * paper.title().hashCode() + paper.blocks().hashCode());
            document.getDocumentInformation().setTitle(paper.title());
            PDRectangle sheet = paper.size() == Paper.Size.A4 ? PDRectangle.A4 : PDRectangle.LETTER;
            PdfPages pages = new PdfPages(document, sheet, new PdfText(document));
            title(pages);
            for (Block block : paper.blocks()) {
                block(pages, block);
            }
            pages.finish(paper.footer());
            document.save(file.toFile());
        }
    }

    private void title(PdfPages pages) throws IOException {
        lines(pages, paper.title(), 18, true);
        if (!paper.subtitle().isEmpty()) {
            lines(pages, paper.subtitle(), 11, false);
        }
        pages.down(10);
    }

    private void block(PdfPages pages, Block block) throws IOException {
        if (block instanceof Block.Heading heading) {
            pages.down(8);
            pages.need(60);
            lines(pages, heading.text(), 12, true);
            pages.down(2);
        } else if (block instanceof Block.Text text) {
            lines(pages, text.text(), BODY, false);
            pages.down(4);
        } else if (block instanceof Block.Facts facts) {
            facts(pages, facts);
        } else if (block instanceof Block.Grid grid) {
            grid(pages, grid);
        }
    }

    private void lines(PdfPages pages, String text, float size, boolean bold) throws IOException {
        for (String line : pages.text().wrap(text, size, pages.width())) {
            pages.need(size * LEADING);
            pages.down(size * LEADING);
            pages.show(line, pages.left(), size, bold);
        }
    }

    private void facts(PdfPages pages, Block.Facts facts) throws IOException {
        for (Block.Facts.Pair pair : facts.pairs()) {
            List<String> label = pages.text().wrap(pair.label(), BODY, LABEL_WIDTH - CELL_GAP);
            List<String> value = pages.text().wrap(pair.value(), BODY, pages.width() - LABEL_WIDTH);
            for (int i = 0; i < Math.max(label.size(), value.size()); i++) {
                pages.need(BODY * LEADING);
                pages.down(BODY * LEADING);
                showIf(pages, label, i, pages.left(), false);
                showIf(pages, value, i, pages.left() + LABEL_WIDTH, false);
            }
        }
        pages.down(8);
    }

    private static void showIf(PdfPages pages, List<String> lines, int i, float x, boolean bold) throws IOException {
        if (i < lines.size()) {
            pages.show(lines.get(i), x, BODY, bold);
        }
    }

    private void grid(PdfPages pages, Block.Grid grid) throws IOException {
        float[] widths = widths(pages, grid.columns());
        List<String> headings =
                grid.columns().stream().map(Block.Column::heading).toList();
        pages.need(BODY * LEADING * 4);
        row(pages, grid.columns(), widths, headings, true);
        pages.rule(0.9f);
        for (List<String> cells : grid.rows()) {
            if (!pages.fits(height(pages, widths, cells))) {
                pages.next();
                row(pages, grid.columns(), widths, headings, true);
                pages.rule(0.9f);
            }
            row(pages, grid.columns(), widths, cells, false);
            pages.rule(0.25f);
        }
        if (!grid.totals().isEmpty()) {
            row(pages, grid.columns(), widths, grid.totals(), true);
        }
        pages.down(8);
    }

    private static float[] widths(PdfPages pages, List<Block.Column> columns) {
        float total = columns.stream().mapToInt(Block.Column::weight).sum();
        float[] widths = new float[columns.size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = pages.width() * columns.get(i).weight() / total;
        }
        return widths;
    }

    private static float height(PdfPages pages, float[] widths, List<String> cells) throws IOException {
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            lines = Math.max(
                    lines,
                    pages.text().wrap(cells.get(i), BODY, widths[i] - CELL_GAP).size());
        }
        return lines * BODY * LEADING + 5;
    }

    private void row(PdfPages pages, List<Block.Column> columns, float[] widths, List<String> cells, boolean bold)
            throws IOException {
        List<List<String>> wrapped = new ArrayList<>();
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            wrapped.add(pages.text().wrap(cells.get(i), BODY, widths[i] - CELL_GAP));
            lines = Math.max(lines, wrapped.get(i).size());
        }
        for (int line = 0; line < lines; line++) {
            // A row taller than a page runs on over it rather than off it.
            pages.need(BODY * LEADING);
            pages.down(BODY * LEADING);
            float x = pages.left();
            for (int i = 0; i < widths.length; i++) {
                cell(pages, columns.get(i), wrapped.get(i), line, x, widths[i], bold);
                x += widths[i];
            }
        }
        pages.down(3);
    }

    private static void cell(
            PdfPages pages, Block.Column column, List<String> lines, int line, float x, float width, boolean bold)
            throws IOException {
        if (line < lines.size()) {
            String text = lines.get(line);
            float from =
                    column.right() ? x + width - CELL_GAP / 2 - pages.text().width(text, BODY) : x;
            pages.show(text, from, BODY, bold);
        }
    }

    /** How a heavier weight is drawn: the one font that comes with PDFBox is regular, so its outline is thickened. */
    static RenderingMode mode(boolean bold) {
        return bold ? RenderingMode.FILL_STROKE : RenderingMode.FILL;
    }
}
