package etamine.documents.internal;

import java.awt.image.Raster;

/**
 * Printers' pictures: cyan, magenta, yellow and black, which the platform unpacks but does not show. Without the press's
 * own profile this is how they look on a screen, near enough to know the plate by.
 */
final class FourColours {
    private static final int FULL = 255;

    private final boolean inverted;
    private final boolean coded;

    private FourColours(JpegMarkers markers) {
        this.inverted = markers.adobeTransform() >= 0; // Adobe programs store how much paper shows, not how much ink
        this.coded = markers.adobeTransform() == 2;
    }

    static Pixels of(Raster raster, JpegMarkers markers) {
        FourColours colours = new FourColours(markers);
        int width = raster.getWidth();
        int height = raster.getHeight();
        int[] rgb = new int[width * height];
        int[] row = new int[width * 4];
        for (int y = 0; y < height; y++) {
            raster.getPixels(raster.getMinX(), raster.getMinY() + y, width, 1, row);
            for (int x = 0; x < width; x++) {
                rgb[y * width + x] = colours.rgb(row, x * 4);
            }
        }
        return new Pixels(width, height, rgb);
    }

    private int rgb(int[] row, int at) {
        int black = paper(row[at + 3]);
        if (!coded) {
            return join(paper(row[at]), paper(row[at + 1]), paper(row[at + 2]), black);
        }
        // YCCK: luminance and two differences by ITU-T T.871, of what is not ink
        double luminance = row[at];
        double blue = row[at + 1] - 128;
        double red = row[at + 2] - 128;
        return join(
                FULL - clamp(luminance + 1.402 * red),
                FULL - clamp(luminance - 0.344136 * blue - 0.714136 * red),
                FULL - clamp(luminance + 1.772 * blue),
                black);
    }

    private int paper(int stored) {
        return inverted ? stored : FULL - stored;
    }

    private static int join(int red, int green, int blue, int black) {
        return red * black / FULL << 16 | green * black / FULL << 8 | blue * black / FULL;
    }

    private static int clamp(double value) {
        return (int) Math.max(0, Math.min(FULL, Math.round(value)));
    }
}
