package etamine.documents.internal;

import etamine.documents.Picture;
import etamine.documents.Pictures;
import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Pictures made for tests. */
final class GivenPictures {
    static final int RED = 0xFF0000;
    static final int GREEN = 0x00C000;
    static final int BLUE = 0x0000FF;
    static final int WHITE = 0xFFFFFF;

    private GivenPictures() {}

    /** Four quarters: red, green, blue, white from the upper left to the lower right. */
    static BufferedImage quarters(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                boolean right = x >= width / 2;
                boolean below = y >= height / 2;
                image.setRGB(x, y, below ? right ? WHITE : BLUE : right ? GREEN : RED);
            }
        }
        return image;
    }

    static BufferedImage noise(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(11);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, random.nextInt());
            }
        }
        return image;
    }

    static byte[] file(BufferedImage image, String form) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        if (!ImageIO.write(image, form, bytes)) {
            throw new IllegalArgumentException("The platform cannot write this as " + form);
        }
        return bytes.toByteArray();
    }

    /** A JPEG with Exif data that say its orientation, in either order of bytes, and where it was taken. */
    static byte[] oriented(BufferedImage image, int orientation, boolean little) throws IOException {
        ByteBuffer exif = ByteBuffer.allocate(80);
        exif.order(little ? java.nio.ByteOrder.LITTLE_ENDIAN : java.nio.ByteOrder.BIG_ENDIAN);
        exif.put("Exif\0\0".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        exif.put((byte) (little ? 'I' : 'M')).put((byte) (little ? 'I' : 'M'));
        exif.putShort((short) 42).putInt(8).putShort((short) 2);
        exif.putShort((short) 0x010F).putShort((short) 2).putInt(12).putInt(38);
        exif.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation);
        exif.putShort((short) 0).putInt(0);
        exif.put("SECRETPLACE\0".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        byte[] data = new byte[exif.position()];
        exif.flip().get(data);
        return withSegment(file(image, "jpeg"), 0xE1, data);
    }

    /** A JPEG with one more segment behind its first two bytes. */
    static byte[] withSegment(byte[] jpeg, int marker, byte[] data) {
        ByteBuffer joined = ByteBuffer.allocate(jpeg.length + data.length + 4);
        joined.put(jpeg, 0, 2).put((byte) 0xFF).put((byte) marker).putShort((short) (data.length + 2));
        return joined.put(data).put(jpeg, 2, jpeg.length - 2).array();
    }

    /** A printers' JPEG of one colour; with a transform, as an Adobe program would write it. */
    static byte[] fourColours(int[] stored, int transform) throws IOException {
        WritableRaster raster = java.awt.image.Raster.createInterleavedRaster(0, 16, 16, 4, null);
        for (int i = 0; i < 256; i++) {
            raster.setPixel(i % 16, i / 16, stored);
        }
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(raster, null, null), null);
        }
        writer.dispose();
        byte[] adobe = {'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, (byte) transform};
        return transform < 0 ? bytes.toByteArray() : withSegment(bytes.toByteArray(), 0xEE, adobe);
    }

    static Picture ready(Pictures.Taken taken) {
        if (taken instanceof Pictures.Taken.Ready ready) {
            return ready.picture();
        }
        throw new AssertionError(taken);
    }

    static BufferedImage shown(Picture picture) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(picture.bytes()));
    }

    /** Whether a pixel is that colour, give or take what JPEG does to it. */
    static boolean near(int pixel, int colour) {
        int apart = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            apart = Math.max(apart, Math.abs((pixel >> shift & 0xFF) - (colour >> shift & 0xFF)));
        }
        return apart <= 16;
    }
}
