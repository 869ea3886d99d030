package etamine.documents;

import java.util.Base64;

/**
 * A picture as it is kept and printed: JPEG (ISO/IEC 10918-1), upright, in sRGB.
 *
 * @param base64 the whole file in base64 (RFC 4648, section 4)
 * @param width in pixels
 * @param height in pixels
 */
public record Picture(String base64, int width, int height) {

    /** Checks that it has a size. */
    public Picture {
        if (width <= 0 || height <= 0) {
            throw new IllegalArgumentException("A picture is at least one pixel wide and high.");
        }
    }

    /** The file. */
    public byte[] bytes() {
        return Base64.getDecoder().decode(base64);
    }
}
