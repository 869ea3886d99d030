package etamine.documents.internal;

import etamine.documents.Picture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes pixels as JPEG of at most so many bytes: first coarser, then smaller. */
final class SmallJpeg {
    private static final float[] QUALITIES = {0.86f, 0.78f, 0.68f, 0.56f};

    private SmallJpeg() {}

    static Picture of(Pixels pixels, int largest) throws IOException {
        Pixels now = pixels;
        while (true) {
            for (float quality : QUALITIES) {
                byte[] file = write(now, quality);
                if (file.length <= largest || Math.max(now.width(), now.height()) == 1) {
                    return new Picture(Base64.getEncoder().encodeToString(file), now.width(), now.height());
                }
            }
            now = now.within(Math.max(1, Math.max(now.width(), now.height()) * 3 / 4));
        }
    }

    private static byte[] write(Pixels pixels, float quality) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.setOutput(out);
            writer.write(null, new IIOImage(pixels.image(), null, null), param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
