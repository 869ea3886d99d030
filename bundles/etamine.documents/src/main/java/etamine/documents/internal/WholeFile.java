package etamine.documents.internal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file so that it is complete or absent. */
final class WholeFile {

    /** Fills the part file. */
    interface Filling {
        void into(Path part) throws IOException;
    }

    private WholeFile() {}

    static void write(Path file, Filling filling) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        Path part = Files.createTempFile(folder, ".part-", "");
        try {
            filling.into(part);
            try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            move(part, file);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void move(Path part, Path file) throws IOException {
        try {
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
