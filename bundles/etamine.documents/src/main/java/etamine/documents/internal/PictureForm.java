package etamine.documents.internal;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** Forms of pictures, told by how a file begins. */
enum PictureForm {
    /** ISO/IEC 10918-1. */
    JPEG(true, 0, "\u00ff\u00d8\u00ff"),
    /** W3C Portable Network Graphics. */
    PNG(true, 0, "\u0089PNG\r\n\u001a\n"),
    /** Graphics Interchange Format. */
    GIF(true, 0, "GIF8"),
    /** Windows bitmap. */
    BMP(true, 0, "BM"),
    /** What many telephones write. */
    HEIC(false, 4, "ftyp"),
    /** What many web pages have. */
    WEBP(false, 8, "WEBP"),
    /** What scanners write, first byte order. */
    TIFF(false, 0, "II*\0"),
    /** What scanners write, second byte order. */
    TIF(false, 0, "MM\0*"),
    /** A document. */
    PDF(false, 0, "%PDF");

    private final boolean read;
    private final int from;
    private final byte[] sign;

    PictureForm(boolean read, int from, String sign) {
        this.read = read;
        this.from = from;
        this.sign = sign.getBytes(StandardCharsets.ISO_8859_1);
    }

    static Optional<PictureForm> of(byte[] file) {
        for (PictureForm form : values()) {
            if (form.fits(file)) {
                return Optional.of(form);
            }
        }
        return Optional.empty();
    }

    private boolean fits(byte[] file) {
        boolean fits = file.length >= from + sign.length;
        for (int i = 0; fits && i < sign.length; i++) {
            fits = file[from + i] == sign[i];
        }
        return fits;
    }

    /** Whether such pictures are taken in. */
    boolean isRead() {
        return read;
    }

    /** As the platform calls it. */
    String inPlatform() {
        return name().toLowerCase(Locale.ROOT);
    }
}
