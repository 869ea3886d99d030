package etamine.documents.internal;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.Raster;

/** Lays what was unpacked on white, in sRGB. */
final class Flat {
    private static final int WHITE = 255;

    private Flat() {}

    static Pixels of(BufferedImage image) {
        ColorSpace space = image.getColorModel().getColorSpace();
        if (space.getType() == ColorSpace.TYPE_GRAY) {
            return grey(image);
        }
        return drawn(space.isCS_sRGB() ? image : standard(image));
    }

    /** Pictures with a colour profile of their own; all at once, since one by one takes minutes. */
    private static BufferedImage standard(BufferedImage image) {
        int type = image.getColorModel().hasAlpha() ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
        BufferedImage converted = new BufferedImage(image.getWidth(), image.getHeight(), type);
        return new ColorConvertOp(null).filter(image, converted);
    }

    private static Pixels drawn(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        BufferedImage white = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = white.createGraphics();
        graphics.drawImage(image, 0, 0, Color.WHITE, null);
        graphics.dispose();
        return new Pixels(width, height, white.getRGB(0, 0, width, height, null, 0, width));
    }

    /**
     * Grey as the file has it. The platform takes the grey of files for linear light and would brighten it.
     */
    private static Pixels grey(BufferedImage image) {
        Raster raster = image.getRaster();
        int width = image.getWidth();
        int height = image.getHeight();
        int most = (1 << image.getColorModel().getComponentSize(0)) - 1;
        boolean alpha = image.getColorModel().hasAlpha();
        int[] rgb = new int[width * height];
        int[] row = new int[width * raster.getNumBands()];
        for (int y = 0; y < height; y++) {
            raster.getPixels(0, y, width, 1, row);
            for (int x = 0; x < width; x++) {
                int grey = row[x * raster.getNumBands()] * WHITE / most;
                int cover = alpha ? row[x * raster.getNumBands() + 1] * WHITE / most : WHITE;
                int seen = (grey * cover + WHITE * (WHITE - cover)) / WHITE;
                rgb[y * width + x] = seen << 16 | seen << 8 | seen;
            }
        }
        return new Pixels(width, height, rgb);
    }
}
