package etamine.checks.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The bundles as they were built and assembled. */
final class Jars {
    static final Path ROOT = Path.of("..", "..").toAbsolutePath().normalize();
    static final Path ASSEMBLED = ROOT.resolve("product/target/app/bundles");
    private static final Pattern CLAUSE = Pattern.compile("(?:^|,)([\\w.]+)((?:;[^,\"]*(?:\"[^\"]*\")?)*)");

    private Jars() {}

    /** The manifests of our own bundles by symbolic name. */
    static Map<String, Manifest> own() {
        Map<String, Manifest> manifests = new TreeMap<>();
        try (var files = Files.list(ASSEMBLED)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                try (JarFile jar = new JarFile(file.toFile())) {
                    Manifest manifest = jar.getManifest();
                    String name = manifest == null
                            ? null
                            : manifest.getMainAttributes().getValue("Bundle-SymbolicName");
                    if (name != null && name.startsWith("etamine.")) {
                        manifests.put(name.split(";")[0], manifest);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Assemble the product first: product/target/app is missing.", e);
        }
        return manifests;
    }

    static Set<String> packages(Manifest manifest, String header) {
        String value = manifest.getMainAttributes().getValue(header);
        Set<String> packages = new TreeSet<>();
        if (value != null) {
            Matcher matcher = CLAUSE.matcher(value);
            while (matcher.find()) {
                packages.add(matcher.group(1));
            }
        }
        return packages;
    }

    /** Which of our bundles exports a package. */
    static Map<String, String> exporters() {
        Map<String, String> exporters = new LinkedHashMap<>();
        own().forEach((bundle, manifest) ->
                packages(manifest, "Export-Package").forEach(name -> exporters.put(name, bundle)));
        return exporters;
    }
}
