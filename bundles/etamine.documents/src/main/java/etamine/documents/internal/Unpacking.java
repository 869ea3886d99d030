package etamine.documents.internal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** One picture being unpacked: its size first, its pixels only if the size will do. Used once. */
final class Unpacking implements AutoCloseable {
    private final byte[] file;
    private final PictureForm form;
    private final ImageReader reader;
    private final MemoryCacheImageInputStream in;
    private boolean cutShort;

    Unpacking(byte[] file, PictureForm form) {
        this.file = file;
        this.form = form;
        this.reader = ImageIO.getImageReadersByFormatName(form.inPlatform()).next();
        this.in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file));
        reader.setInput(in, true, true);
        reader.addIIOReadWarningListener((source, warning) -> note(warning));
    }

    /** The platform fills up what a file lacks and only murmurs. */
    private void note(String warning) {
        String said = warning.toLowerCase(Locale.ROOT);
        cutShort |= said.contains("premature") || said.contains("end of") || said.contains("eoi");
    }

    int width() throws IOException {
        return reader.getWidth(0);
    }

    int height() throws IOException {
        return reader.getHeight(0);
    }

    /** Whether the file ended before the picture did; known after its pixels were read. */
    boolean cutShort() {
        return cutShort;
    }

    /** The pixels upright; of a large picture only every so many, so that at least one and a half edges are left. */
    Pixels pixels(int edge) throws IOException {
        ImageReadParam param = reader.getDefaultReadParam();
        int step = Math.max(1, Math.max(width(), height()) / (edge + edge / 2));
        param.setSourceSubsampling(step, step, 0, 0);
        if (form != PictureForm.JPEG) {
            return Flat.of(reader.read(0, param));
        }
        JpegMarkers markers = JpegMarkers.of(file);
        Pixels pixels = markers.components() == 4
                ? FourColours.of(reader.readRaster(0, param), markers)
                : Flat.of(reader.read(0, param));
        return pixels.within(edge).upright(markers.orientation());
    }

    @Override
    public void close() throws IOException {
        reader.dispose();
        in.close();
    }
}
