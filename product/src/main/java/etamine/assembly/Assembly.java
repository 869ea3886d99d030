package etamine.assembly;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Lays out the program folder: {@code features/*.list}, {@code bundles/*.jar}, {@code launcher/*.jar},
 * {@code native/*} and an empty {@code modules} folder. A feature that names a bundle the build did not gather, or a
 * gathered bundle that no feature names, stops the build: the two lists cannot drift apart.
 */
public final class Assembly {
    private static final String FRAMEWORK = "org.apache.felix.org.apache.felix.framework-";

    private final Path gathered;
    private final Path next;
    private final Set<String> used = new TreeSet<>();

    private Assembly(Path gathered, Path next) {
        this.gathered = gathered;
        this.next = next;
    }

    /** Takes the folder of features, the folder of gathered jars, the launcher's jar and the folder to make. */
    public static void main(String[] arguments) throws IOException {
        Path app = Path.of(arguments[3]);
        Path next = app.resolveSibling(app.getFileName() + ".next");
        delete(next);
        Path gathered = Path.of(arguments[1]);
        try {
            new Assembly(gathered, next).layOut(Path.of(arguments[0]), Path.of(arguments[2]));
        } finally {
            delete(gathered); // or a later build would take what an earlier one gathered for a stray
        }
        replace(app, next);
    }

    private void layOut(Path features, Path launcher) throws IOException {
        for (String folder : List.of("features", "bundles", "launcher", "native", "modules")) {
            Files.createDirectories(next.resolve(folder));
        }
        for (Path file : list(features, "*.json")) {
            write(FeatureFile.read(file));
        }
        Files.copy(launcher, next.resolve("launcher").resolve("etamine.launcher.jar"));
        refuseStrays();
        NativeFiles.extract(next.resolve("bundles"), next.resolve("native"));
    }

    private void write(FeatureFile feature) throws IOException {
        List<String> lines = new ArrayList<>(feature.header());
        for (FeatureFile.Entry entry : feature.bundles()) {
            Path jar = gathered.resolve(entry.fileName());
            if (Files.exists(jar)) {
                lines.add(entry.line());
                used.add(entry.fileName());
                Files.copy(jar, next.resolve("bundles").resolve(entry.fileName()), StandardCopyOption.REPLACE_EXISTING);
            } else if (entry.everywhere()) {
                throw new IOException("Feature " + feature.name() + " names " + entry.id()
                        + ", which the build did not gather. Make its version agree with the poms.");
            }
        }
        Files.write(next.resolve("features").resolve(feature.name() + ".list"), lines);
    }

    private void refuseStrays() throws IOException {
        for (Path jar : list(gathered, "*.jar")) {
            String name = jar.getFileName().toString();
            if (name.startsWith(FRAMEWORK)) {
                Files.copy(jar, next.resolve("launcher").resolve("framework.jar"));
            } else if (!used.contains(name)) {
                throw new IOException("No feature names " + name + ". Add it to one, or exclude it in a pom.");
            }
        }
    }

    /** Running programs keep the files they have open; the next start finds the new ones. */
    private static void replace(Path app, Path next) throws IOException {
        Path old = app.resolveSibling(app.getFileName() + ".old");
        delete(old);
        if (Files.exists(app)) {
            Files.move(app, old);
            keepModules(old.resolve("modules"), next.resolve("modules"));
        }
        Files.move(next, app);
        delete(old);
    }

    /** What a person put there is theirs, not the build's. */
    private static void keepModules(Path from, Path to) throws IOException {
        if (Files.isDirectory(from)) {
            for (Path file : list(from, "*")) {
                Files.move(file, to.resolve(file.getFileName()));
            }
        }
    }

    static List<Path> list(Path folder, String glob) throws IOException {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder, glob)) {
            stream.forEach(files::add);
        }
        files.sort(Comparator.naturalOrder());
        return files;
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path path : walk.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
