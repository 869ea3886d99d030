package etamine.documents.internal;

import etamine.documents.Align;
import etamine.documents.Block;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Lays grids out: headings on every page, rows whole where a page can hold them. */
final class PdfGrid {
    private final Type.Sizes sizes;
    private final Type body;
    private final float gap;

    PdfGrid(Type.Sizes sizes) {
        this.sizes = sizes;
        this.body = sizes.body();
        this.gap = sizes.gap(8);
    }

    /** One grid on its way: its columns and how wide each is. */
    private record Sheet(Canvas canvas, List<Block.Column> columns, float[] widths) {}

    void grid(Canvas canvas, Block.Grid grid) throws IOException {
        Sheet sheet = new Sheet(canvas, grid.columns(), new ColumnWidths(canvas, sizes).of(grid));
        canvas.need(headHeight(sheet) + body.line() * 2);
        head(sheet);
        for (List<String> cells : grid.rows()) {
            List<List<String>> wrapped = wrapped(sheet, cells, body);
            float height = lines(wrapped) * body.line() + sizes.gap(5);
            if (!canvas.fits(height)) {
                canvas.next();
                head(sheet);
            }
            row(sheet, wrapped, body);
            canvas.rule(0.25f);
        }
        if (!grid.totals().isEmpty()) {
            row(sheet, wrapped(sheet, grid.totals(), body.heavy()), body.heavy());
        }
        canvas.down(sizes.gap(8));
    }

    private float headHeight(Sheet sheet) throws IOException {
        return Math.max(uprightHeight(sheet), levelHeads(sheet).size() * body.line());
    }

    private void head(Sheet sheet) throws IOException {
        if (sheet.columns().stream().allMatch(column -> column.heading().isEmpty())) {
            sheet.canvas().rule(0.25f);
            return;
        }
        float height = headHeight(sheet);
        List<List<String>> level = wrapped(sheet, levelHeadings(sheet), body.heavy());
        sheet.canvas().down(height - lines(level) * body.line());
        row(sheet, level, body.heavy());
        float x = sheet.canvas().left();
        for (int i = 0; i < sheet.widths().length; i++) {
            Block.Column column = sheet.columns().get(i);
            if (column.upright()) {
                float middle = x + (sheet.widths()[i] + body.size() * 0.7f) / 2 - gap / 2;
                sheet.canvas().showUpright(column.heading(), middle, body.heavy());
            }
            x += sheet.widths()[i];
        }
        sheet.canvas().rule(0.9f);
    }

    private float uprightHeight(Sheet sheet) throws IOException {
        float height = 0;
        for (Block.Column column : sheet.columns()) {
            if (column.upright()) {
                height = Math.max(height, sheet.canvas().text().width(column.heading(), body.size()) + sizes.gap(4));
            }
        }
        return height;
    }

    private List<String> levelHeads(Sheet sheet) throws IOException {
        return wrapped(sheet, levelHeadings(sheet), body.heavy()).stream()
                .reduce(List.of(), (a, b) -> a.size() >= b.size() ? a : b);
    }

    private static List<String> levelHeadings(Sheet sheet) {
        return sheet.columns().stream()
                .map(column -> column.upright() ? "" : column.heading())
                .toList();
    }

    private List<List<String>> wrapped(Sheet sheet, List<String> cells, Type type) throws IOException {
        List<List<String>> wrapped = new ArrayList<>();
        for (int i = 0; i < sheet.widths().length; i++) {
            float width = Math.max(sheet.widths()[i] - gap, type.size());
            wrapped.add(sheet.canvas().text().wrap(cells.get(i), type.size(), width));
        }
        return wrapped;
    }

    private static int lines(List<List<String>> cells) {
        return cells.stream().mapToInt(List::size).max().orElse(1);
    }

    private void row(Sheet sheet, List<List<String>> cells, Type type) throws IOException {
        for (int line = 0; line < lines(cells); line++) {
            // A row taller than a page runs on over it rather than off it.
            sheet.canvas().need(type.line());
            sheet.canvas().down(type.line());
            float x = sheet.canvas().left();
            for (int i = 0; i < sheet.widths().length; i++) {
                if (line < cells.get(i).size()) {
                    cell(sheet, i, x, cells.get(i).get(line), type);
                }
                x += sheet.widths()[i];
            }
        }
        sheet.canvas().down(sizes.gap(3));
    }

    private void cell(Sheet sheet, int column, float x, String text, Type type) throws IOException {
        Align align = sheet.columns().get(column).align();
        float room = sheet.widths()[column] - gap - sheet.canvas().text().width(text, type.size());
        boolean last = column == sheet.widths().length - 1;
        float from = x;
        if (align == Align.RIGHT) {
            from += last ? room + gap : room;
        } else if (align == Align.CENTRE) {
            from += room / 2;
        }
        sheet.canvas().show(text, from, type);
    }
}
