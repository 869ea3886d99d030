package etamine.documents.internal;

import etamine.documents.Block;
import etamine.documents.Drawing;
import java.io.IOException;
import java.util.List;

/** Lays blocks out on a canvas, top to bottom. */
final class PdfBlocks {
    private static final float BOX_PADDING = 7;

    private final Type.Sizes sizes;
    private final PdfGrid grids;

    PdfBlocks(Type.Sizes sizes) {
        this.sizes = sizes;
        this.grids = new PdfGrid(sizes);
    }

    void blocks(Canvas canvas, List<Block> blocks) throws IOException {
        for (Block block : blocks) {
            block(canvas, block);
        }
    }

    private void block(Canvas canvas, Block block) throws IOException {
        if (block instanceof Block.Heading heading) {
            canvas.down(sizes.gap(8));
            canvas.need(sizes.gap(60));
            lines(canvas, heading.text(), sizes.heading());
            canvas.down(sizes.gap(2));
        } else if (block instanceof Block.Text text) {
            lines(canvas, text.text(), sizes.body());
            canvas.down(sizes.gap(4));
        } else if (block instanceof Block.Grid grid) {
            grids.grid(canvas, grid);
        } else if (block instanceof Drawing drawing) {
            drawing(canvas, drawing);
        } else {
            arrangement(canvas, block);
        }
    }

    private void arrangement(Canvas canvas, Block block) throws IOException {
        if (block instanceof Block.Facts facts) {
            facts(canvas, facts);
        } else if (block instanceof Block.Caution caution) {
            caution(canvas, caution);
        } else if (block instanceof Block.Together together) {
            together(canvas, together.blocks());
        } else if (block instanceof Block.Beside beside) {
            beside(canvas, beside);
        } else if (block instanceof Block.NewPage) {
            canvas.next();
        } else if (block instanceof Block.Photo photo) {
            photo(canvas, photo);
        }
    }

    void lines(Canvas canvas, String text, Type type) throws IOException {
        for (String line : canvas.text().wrap(text, type.size(), canvas.width())) {
            canvas.need(type.line());
            canvas.down(type.line());
            canvas.show(line, canvas.left(), type);
        }
    }

    private void facts(Canvas canvas, Block.Facts facts) throws IOException {
        Type body = sizes.body();
        float labels = Math.min(sizes.gap(110), canvas.width() * 0.4f);
        for (Block.Facts.Pair pair : facts.pairs()) {
            List<String> label = canvas.text().wrap(pair.label(), body.size(), labels - sizes.gap(8));
            List<String> value = canvas.text().wrap(pair.value(), body.size(), canvas.width() - labels);
            for (int i = 0; i < Math.max(label.size(), value.size()); i++) {
                canvas.need(body.line());
                canvas.down(body.line());
                canvas.show(i < label.size() ? label.get(i) : "", canvas.left(), body);
                canvas.show(i < value.size() ? value.get(i) : "", canvas.left() + labels, body);
            }
        }
        canvas.down(sizes.gap(8));
    }

    private void caution(Canvas canvas, Block.Caution caution) throws IOException {
        Type body = sizes.body();
        float padding = sizes.gap(BOX_PADDING);
        float sign = canvas.text().width("!", body.size()) + padding * 2;
        List<String> lines = canvas.text().wrap(caution.text(), body.size(), canvas.width() - sign - padding);
        float height = lines.size() * body.line() + padding * 2;
        canvas.down(sizes.gap(4));
        canvas.need(Math.min(height, canvas.pageHeight()));
        float top = canvas.y();
        boolean boxed = canvas.fits(height);
        canvas.down(padding - body.size() * 0.2f);
        canvas.down(body.line());
        canvas.show("!", canvas.left() + padding, body.heavy());
        canvas.down(-body.line());
        for (String line : lines) {
            canvas.need(body.line());
            canvas.down(body.line());
            canvas.show(line, canvas.left() + sign, body);
        }
        canvas.down(padding + body.size() * 0.2f);
        if (boxed) {
            canvas.frame(canvas.left(), top, canvas.left() + canvas.width(), canvas.y(), 1);
        }
        canvas.down(sizes.gap(6));
    }

    private void together(Canvas canvas, List<Block> blocks) throws IOException {
        float height = height(canvas, canvas.width(), blocks);
        if (height <= canvas.pageHeight()) {
            canvas.need(height);
        }
        blocks(canvas, blocks);
    }

    private void beside(Canvas canvas, Block.Beside beside) throws IOException {
        float gap = sizes.gap(18);
        float left = (canvas.width() - gap) * beside.leftPercent() / 100;
        float right = canvas.width() - gap - left;
        float height = Math.max(height(canvas, left, beside.left()), height(canvas, right, beside.right()));
        if (height > canvas.pageHeight()) {
            blocks(canvas, beside.left());
            blocks(canvas, beside.right());
            return;
        }
        canvas.need(height);
        float top = canvas.y();
        canvas.within(canvas.left(), left, () -> blocks(canvas, beside.left()));
        canvas.to(top);
        canvas.within(canvas.left() + left + gap, right, () -> blocks(canvas, beside.right()));
        canvas.to(top - height);
    }

    private float height(Canvas canvas, float width, List<Block> blocks) throws IOException {
        Endless endless = new Endless(canvas.text(), width, canvas.pageHeight());
        blocks(endless, blocks);
        return endless.height();
    }

    private void photo(Canvas canvas, Block.Photo photo) throws IOException {
        float tallest = Math.min(photo.tallest(), canvas.pageHeight() - sizes.gap(12));
        float wide = canvas.width();
        float high = wide * photo.picture().height() / photo.picture().width();
        if (high > tallest) {
            wide = wide * tallest / high;
            high = tallest;
        }
        canvas.down(sizes.gap(4));
        canvas.need(high);
        canvas.down(high);
        canvas.photo(photo.picture(), wide, high);
        canvas.down(sizes.gap(8));
    }

    private void drawing(Canvas canvas, Drawing drawing) throws IOException {
        float room = canvas.pageHeight() - sizes.gap(12);
        float scale = (float) Math.min(1, Math.min(canvas.width() / drawing.width(), room / drawing.height()));
        float height = (float) drawing.height() * scale;
        canvas.down(sizes.gap(4));
        canvas.need(height);
        canvas.draw(drawing, scale);
        canvas.down(height + sizes.gap(8));
    }
}
