package etamine.costing.internal.paper;

import etamine.documents.Align;
import etamine.documents.Drawing;
import etamine.documents.Ink;
import etamine.measures.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A cost as blocks in a row, each as wide as its share, with the number of its line in it.
 *
 * @param title what it shows
 * @param pieces the shares
 */
record CostBlocks(String title, List<Piece> pieces) {
    private static final double WIDTH = 500;
    private static final double HEIGHT = 46;
    private static final double BAR = 26;
    private static final double TYPE = 9;
    private static final double WIDE_ENOUGH = 70;

    /**
     * One share.
     *
     * @param mark what stands in its block
     * @param name what it is
     * @param money its size
     */
    record Piece(String mark, String name, Money money) {}

    /** The picture; empty when there is nothing to divide. */
    Optional<Drawing> drawing() {
        List<Piece> shown =
                pieces.stream().filter(piece -> piece.money().signum() > 0).toList();
        double whole = shown.stream()
                .mapToDouble(piece -> piece.money().amount().doubleValue())
                .sum();
        if (shown.isEmpty()) {
            return Optional.empty();
        }
        List<Drawing.Shape> shapes = new ArrayList<>();
        double x = 0;
        for (int i = 0; i < shown.size(); i++) {
            double width = WIDTH * shown.get(i).money().amount().doubleValue() / whole;
            block(shapes, shown.get(i), x, width, Ink.series(i));
            x += width;
        }
        return Optional.of(new Drawing(title, WIDTH, HEIGHT, shapes));
    }

    private static void block(List<Drawing.Shape> shapes, Piece piece, double x, double width, Ink ink) {
        shapes.add(new Drawing.Box(x, 0, width, BAR, Drawing.Paint.edged(ink, Ink.WHITE)));
        Ink text = ink.dark() ? Ink.WHITE : Ink.BLACK;
        if (width > TYPE * piece.mark().length()) {
            Drawing.Type type = Drawing.Type.of(TYPE).at(Align.CENTRE).in(text);
            shapes.add(new Drawing.Label(x + width / 2, BAR - TYPE, piece.mark(), type));
        }
        if (width > WIDE_ENOUGH) {
            Drawing.Type type = Drawing.Type.of(TYPE).in(Ink.GREY).within(width - 4);
            shapes.add(new Drawing.Label(x + 2, BAR + TYPE + 3, piece.name(), type));
        }
    }
}
