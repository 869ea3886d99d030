package etamine.book.internal.exchange;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Tells whether bytes are UTF-8 text, and how long their mark at the start is. */
final class StrictText {
    private static final int CHUNK = 8192;

    private StrictText() {}

    /** The length of a UTF-8 byte order mark; 0 without one. */
    static int markLength(byte[] bytes) {
        return startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    }

    /** What is wrong with the encoding, in words; empty when the bytes are UTF-8. */
    static Optional<String> fault(byte[] bytes) {
        if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
            return Optional.of("This file is UTF-16 text (its first two bytes say so); save it as UTF-8.");
        }
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                return Optional.of("This file is not UTF-8 text: the byte at offset " + i
                        + " is zero, as in UTF-16 or in a file that is not text; save it as UTF-8.");
            }
        }
        return malformed(bytes)
                .map(offset -> "This file is not UTF-8 text: the byte at offset " + offset + " (line "
                        + line(bytes, offset) + ") cannot stand there; save it as UTF-8.");
    }

    private static Optional<Integer> malformed(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(CHUNK);
        while (true) {
            CoderResult result = decoder.decode(in, out, true);
            if (result.isError()) {
                return Optional.of(in.position());
            }
            if (result.isUnderflow()) {
                return Optional.empty();
            }
            out.clear();
        }
    }

    private static int line(byte[] bytes, int offset) {
        int line = 1;
        for (int i = 0; i < offset; i++) {
            if (bytes[i] == '\n') {
                line++;
            }
        }
        return line;
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
