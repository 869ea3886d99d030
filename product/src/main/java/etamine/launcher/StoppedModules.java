package etamine.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** The modules that somebody stopped earlier and nobody started again, one name to a line. */
final class StoppedModules {
    /** The property that names their file. */
    static final String PROPERTY = "etamine.stopped";

    private StoppedModules() {}

    static Set<String> read(Map<String, String> properties) throws StartException {
        String file = properties.get(PROPERTY);
        if (file == null || !Files.exists(Path.of(file))) {
            return Set.of();
        }
        try {
            return new HashSet<>(Files.readAllLines(Path.of(file)));
        } catch (IOException e) {
            throw new StartException("The list of stopped modules cannot be read: " + e.getMessage(), e);
        }
    }
}
