package etamine.documents.internal;

import java.nio.charset.StandardCharsets;

/**
 * What the segments before the pixels of a JPEG say: how many colours it has, how they are coded and which way is up.
 * Markers and segments by ISO/IEC 10918-1:1994, annex B; the Adobe segment by ITU-T T.872 (2012), 6.5.3. Whatever is
 * damaged counts as not said.
 */
final class JpegMarkers {
    private static final int START_OF_SCAN = 0xDA;
    private static final int END = 0xD9;
    private static final int APP1 = 0xE1;
    private static final int APP14 = 0xEE;
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] ADOBE = "Adobe".getBytes(StandardCharsets.US_ASCII);

    private final byte[] file;
    private int components;
    private int adobeTransform = -1;
    private int orientation = 1;

    private JpegMarkers(byte[] file) {
        this.file = file;
    }

    static JpegMarkers of(byte[] file) {
        JpegMarkers markers = new JpegMarkers(file);
        markers.walk();
        return markers;
    }

    /** The number of colours; 0 when not said. */
    int components() {
        return components;
    }

    /** How an Adobe program coded the colours: 0 as they are, 2 as YCCK; -1 when none wrote it. */
    int adobeTransform() {
        return adobeTransform;
    }

    /** The Exif orientation, from 1 to 8; 1 when not said. */
    int orientation() {
        return orientation;
    }

    private void walk() {
        int at = 2;
        while (at + 4 <= file.length && at(at) == 0xFF) {
            int marker = at(at + 1);
            if (marker == 0xFF) {
                at++;
            } else if (marker == START_OF_SCAN || marker == END) {
                return;
            } else {
                int length = at(at + 2) << 8 | at(at + 3);
                segment(marker, at + 4, Math.min(file.length, at + 2 + length));
                at += 2 + Math.max(2, length);
            }
        }
    }

    private void segment(int marker, int from, int to) {
        if (isFrame(marker) && to - from >= 6) {
            components = at(from + 5);
        } else if (marker == APP1 && orientation == 1 && starts(from, to, EXIF)) {
            orientation = ExifOrientation.of(file, from + EXIF.length, to);
        } else if (marker == APP14 && to - from >= 12 && starts(from, to, ADOBE)) {
            adobeTransform = at(from + 11);
        }
    }

    /** SOF0 to SOF15 without the three markers among them that are no frames. */
    private static boolean isFrame(int marker) {
        return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    }

    private boolean starts(int from, int to, byte[] with) {
        boolean same = to - from >= with.length;
        for (int i = 0; same && i < with.length; i++) {
            same = file[from + i] == with[i];
        }
        return same;
    }

    private int at(int place) {
        return file[place] & 0xFF;
    }
}
