package etamine.documents.internal;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * Reads which way is up from Exif data: tag 0112 hex, Orientation, in the 0th image file directory (CIPA DC-008-2019,
 * Exif 2.32, 4.6.4 and 4.6.5; published). Everything else in there is passed over.
 */
final class ExifOrientation {
    private static final int ORIENTATION = 0x0112;
    private static final int SHORT = 3;
    private static final int ENTRY = 12;

    private ExifOrientation() {}

    /** The orientation in the data between two places of a file; 1, which is upright, when there is none. */
    static int of(byte[] file, int from, int to) {
        if (to - from < 8) {
            return 1;
        }
        ByteBuffer data = ByteBuffer.wrap(file, from, to - from).slice();
        data.order(data.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        long directory = data.getInt(4) & 0xFFFF_FFFFL;
        if (directory + 2 > data.limit()) {
            return 1;
        }
        int entries = data.getShort((int) directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            long entry = directory + 2 + (long) i * ENTRY;
            if (entry + ENTRY > data.limit()) {
                return 1;
            }
            if ((data.getShort((int) entry) & 0xFFFF) == ORIENTATION && data.getShort((int) entry + 2) == SHORT) {
                int value = data.getShort((int) entry + 8) & 0xFFFF;
                return value >= 1 && value <= 8 ? value : 1;
            }
        }
        return 1;
    }
}
