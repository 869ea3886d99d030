package etamine.recipes.internal.linked;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file so that it is complete or as it was. */
final class CompleteFile {
    private CompleteFile() {}

    static void write(Path file, byte[] bytes) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Path part = Files.createTempFile(folder, ".part-", "");
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
