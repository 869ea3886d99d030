package etamine.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** The framework's own folder: one for each process, so that two never meet in it, and gone when it ends. */
final class Cache implements AutoCloseable {
    /** Some hundred tiny files that live as long as the process: memory is the place where there is such a folder. */
    private static final Path MEMORY = Path.of("/dev/shm");

    private final Path folder;

    Cache() throws StartException {
        try {
            folder = Files.isWritable(MEMORY)
                    ? Files.createTempDirectory(MEMORY, "etamine-")
                    : Files.createTempDirectory("etamine-");
        } catch (IOException e) {
            throw new StartException("There is no room in the temporary folder: " + e.getMessage(), e);
        }
    }

    Path folder() {
        return folder;
    }

    @Override
    public void close() {
        try (Stream<Path> walk = Files.walk(folder)) {
            walk.sorted(Comparator.reverseOrder()).forEach(Cache::delete);
        } catch (IOException e) {
            System.err.println("etamine: " + folder + " could not be removed: " + e.getMessage());
        }
    }

    private static void delete(Path path) {
        path.toFile().delete();
    }
}
