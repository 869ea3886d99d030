package etamine.recipes.internal.photo;

import etamine.documents.Pictures;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Files of pictures: read no further than they may be long, written so that they are complete or as they were. */
final class PictureFile {
    private PictureFile() {}

    /** At most one byte more than is taken in, so that what is too long is seen to be. */
    static byte[] read(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new IOException("it is a folder; choose the picture in it");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(Pictures.LARGEST_FILE + 1);
        }
    }

    static String sentence(Path file, IOException unreadable) {
        if (unreadable instanceof NoSuchFileException) {
            return "There is no file " + file + "; check its name and folder.";
        }
        if (unreadable instanceof AccessDeniedException) {
            return "You may not read " + file + "; ask its owner for the right.";
        }
        return file + " cannot be read: " + unreadable.getMessage() + ".";
    }

    static void write(Path file, byte[] bytes) throws IOException {
        Path part = Files.createTempFile(file.toAbsolutePath().getParent(), ".part-", "");
        try {
            Files.write(part, bytes);
            try {
                Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
