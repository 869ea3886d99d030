package etamine.modules.internal;

import etamine.modules.ModuleException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.osgi.framework.BundleContext;

/**
 * The modules that shall not run at the next start, one name to a line in the file that the framework property
 * {@code etamine.stopped} names; without the property nothing is remembered.
 */
final class StoppedModules {
    private final Optional<Path> file;

    StoppedModules(BundleContext context) {
        this.file = Optional.ofNullable(context.getProperty("etamine.stopped")).map(Path::of);
    }

    void add(String name) throws ModuleException {
        change(name, true);
    }

    void remove(String name) throws ModuleException {
        change(name, false);
    }

    private void change(String name, boolean stopped) throws ModuleException {
        if (file.isEmpty()) {
            return;
        }
        Path path = file.get();
        try {
            Set<String> names = new TreeSet<>(Files.exists(path) ? Files.readAllLines(path) : Set.of());
            if (stopped ? names.add(name) : names.remove(name)) {
                Files.write(path, names);
            }
        } catch (IOException e) {
            throw new ModuleException("Done, but the next start will not know: " + path + " cannot be written.", e);
        }
    }
}
