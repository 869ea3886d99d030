package etamine.storage.sql.internal;

import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Tells from a file's first bytes whether it is a book, and if not, what it is. */
final class FileKind {
    /** Marks a SQLite file as a book of this program: "EtMn". */
    static final int APPLICATION_ID = 0x45744D6E;

    private static final byte[] SQLITE = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int HEADER = 100;
    private static final int PAGE_SIZE_AT = 16;
    private static final int CHANGES_AT = 24;
    private static final int PAGES_AT = 28;
    private static final int APPLICATION_ID_AT = 68;
    private static final int VALID_FOR_AT = 92;
    private static final int LARGEST_PAGE = 65_536;

    private FileKind() {}

    /** Throws MISSING, FOREIGN or DAMAGED unless the file looks like a whole book. Must not be called on an open one. */
    static void requireBook(Path file) {
        if (!Files.exists(file)) {
            throw new BookException(Reason.MISSING, "There is no book " + file + ".");
        }
        if (Files.isDirectory(file)) {
            throw foreign(file, "a folder");
        }
        try (InputStream in = Files.newInputStream(file)) {
            requireBook(file, in.readNBytes(HEADER), Files.size(file));
        } catch (IOException problem) {
            throw new BookException(Reason.OTHER, file + " cannot be read: " + problem.getMessage(), problem);
        }
    }

    private static void requireBook(Path file, byte[] head, long size) {
        if (!startsWith(head, SQLITE)) {
            throw foreign(file, whatElse(head));
        }
        if (head.length < HEADER) {
            throw damaged(file);
        }
        ByteBuffer header = ByteBuffer.wrap(head);
        if (header.getInt(APPLICATION_ID_AT) != APPLICATION_ID) {
            throw foreign(file, "a database of another program");
        }
        if (!Files.exists(beside(file, "-wal")) && size < expectedSize(header)) {
            throw damaged(file);
        }
    }

    private static long expectedSize(ByteBuffer header) {
        int stored = header.getShort(PAGE_SIZE_AT) & 0xffff;
        long pageSize = stored == 1 ? LARGEST_PAGE : stored;
        boolean countIsValid = header.getInt(CHANGES_AT) == header.getInt(VALID_FOR_AT);
        return countIsValid ? pageSize * header.getInt(PAGES_AT) : pageSize;
    }

    /** The file that stands beside another under its name and that ending. */
    static Path beside(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }

    private static String whatElse(byte[] head) {
        if (head.length == 0) {
            return "an empty file";
        }
        if (startsWith(head, "%PDF".getBytes(StandardCharsets.US_ASCII))) {
            return "a PDF document";
        }
        if (startsWith(head, new byte[] {'P', 'K', 3, 4})) {
            return "an archive or an office document";
        }
        return isText(head) ? "a text file" : "some other file";
    }

    private static boolean isText(byte[] head) {
        for (byte value : head) {
            if (value >= 0 && value < ' ' && value != '\n' && value != '\r' && value != '\t') {
                return false;
            }
        }
        return isUtf8(head);
    }

    /** Whether it is UTF-8, a character cut off at the end forgiven. */
    private static boolean isUtf8(byte[] head) {
        int end = head.length;
        while (end > 0 && head.length - end < 3 && head[end - 1] < 0) {
            end--;
        }
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(head, 0, end));
            return true;
        } catch (CharacterCodingException otherEncoding) {
            return false;
        }
    }

    private static boolean startsWith(byte[] head, byte[] start) {
        return Arrays.equals(head, 0, Math.min(head.length, start.length), start, 0, start.length);
    }

    private static BookException foreign(Path file, String what) {
        return new BookException(
                Reason.FOREIGN, file + " is " + what + ", not a book of this program. Choose another file.");
    }

    private static BookException damaged(Path file) {
        return new BookException(
                Reason.DAMAGED,
                file + " is damaged: a part of it is missing. Put it aside and restore the last backup.");
    }
}
