package etamine.launcher;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/** The assembled program with a features folder and a modules folder that a test may change. */
final class ProgramFolder implements AutoCloseable {
    static final Path ASSEMBLED = Path.of("target", "app").toAbsolutePath();

    private static final List<String> LINKS = List.of("bundles", "native", "launcher");

    private final Path folder;

    ProgramFolder(Path folder) throws IOException {
        this.folder = folder;
        Files.createDirectory(folder.resolve("modules"));
        Files.createDirectory(folder.resolve("features"));
        for (String same : LINKS) {
            Files.createSymbolicLink(folder.resolve(same), ASSEMBLED.resolve(same));
        }
        try (DirectoryStream<Path> lists = Files.newDirectoryStream(ASSEMBLED.resolve("features"))) {
            for (Path list : lists) {
                Files.copy(list, folder.resolve("features").resolve(list.getFileName()));
            }
        }
    }

    /** Where an extra module goes. */
    Path module(String name) {
        return folder.resolve("modules").resolve(name);
    }

    /** Adds a feature of these lines. */
    void feature(String name, String... lines) throws IOException {
        Files.write(folder.resolve("features").resolve(name + ".list"), List.of(lines));
    }

    Settings settings(String mode, String feature, String... arguments) {
        return new Settings(
                folder,
                List.of(feature),
                mode,
                List.of(arguments),
                Map.of(),
                Duration.ofSeconds(mode.equals("probe") ? 20 : 1));
    }

    @Override
    public void close() throws IOException {
        for (String same : LINKS) {
            Files.delete(folder.resolve(same));
        }
    }
}
