package etamine.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** The framework's own folder: one for each process, so that two never meet in it, and gone when it ends. */
final class Cache implements AutoCloseable {
    private final Path folder;

    Cache() throws StartException {
        try {
            folder = Files.createTempDirectory("etamine-");
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
