package etamine.documents.internal;

import java.awt.image.BufferedImage;

/**
 * Opaque sRGB pixels, row by row.
 *
 * @param width how many in a row
 * @param height how many rows
 * @param rgb as {@code 0xRRGGBB}
 */
record Pixels(int width, int height, int[] rgb) {

    BufferedImage image() {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, width, height, rgb, 0, width);
        return image;
    }

    /** The same with a longer edge of at most so many pixels; each pixel is the mean of those it stands for. */
    Pixels within(int edge) {
        int longer = Math.max(width, height);
        if (longer <= edge) {
            return this;
        }
        int wide = Math.max(1, Math.round((float) width * edge / longer));
        int high = Math.max(1, Math.round((float) height * edge / longer));
        return new Pixels(wide, high, Means.of(this, wide, high));
    }

    /**
     * The same as people held the camera.
     *
     * @param orientation the Exif orientation: which sides the first row and the first column show (CIPA DC-008-2019,
     *     4.6.5, Orientation)
     */
    Pixels upright(int orientation) {
        if (orientation == 1) {
            return this;
        }
        boolean lying = orientation >= 5;
        int wide = lying ? height : width;
        int high = lying ? width : height;
        int[] turned = new int[rgb.length];
        for (int y = 0; y < high; y++) {
            for (int x = 0; x < wide; x++) {
                turned[y * wide + x] = rgb[source(orientation, x, y)];
            }
        }
        return new Pixels(wide, high, turned);
    }

    private int source(int orientation, int x, int y) {
        int right = width - 1;
        int bottom = height - 1;
        return switch (orientation) {
            case 2 -> index(right - x, y);
            case 3 -> index(right - x, bottom - y);
            case 4 -> index(x, bottom - y);
            case 5 -> index(y, x);
            case 6 -> index(y, bottom - x);
            case 7 -> index(right - y, bottom - x);
            case 8 -> index(right - y, x);
            default -> index(x, y);
        };
    }

    private int index(int x, int y) {
        return y * width + x;
    }
}
