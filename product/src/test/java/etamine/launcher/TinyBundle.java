package etamine.launcher;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

/** Writes a bundle's jar for a test. */
final class TinyBundle {
    private final Manifest manifest = new Manifest();
    private final Set<String> classes = new LinkedHashSet<>();

    TinyBundle(String symbolicName) {
        header(Attributes.Name.MANIFEST_VERSION.toString(), "1.0");
        header("Bundle-ManifestVersion", "2");
        header("Bundle-SymbolicName", symbolicName);
        header("Bundle-Version", "1.2.3");
        header("Import-Package", "org.osgi.framework");
    }

    TinyBundle header(String name, String value) {
        manifest.getMainAttributes().putValue(name, value);
        return this;
    }

    TinyBundle activator(Class<?> type) {
        header("Bundle-Activator", type.getName());
        classes.add(type.getName().replace('.', '/') + ".class");
        return this;
    }

    Path write(Path jar) throws IOException {
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream zip = new JarOutputStream(out, manifest)) {
            for (String file : classes) {
                zip.putNextEntry(new JarEntry(file));
                try (InputStream in = TinyBundle.class.getClassLoader().getResourceAsStream(file)) {
                    in.transferTo(zip);
                }
            }
        }
        return jar;
    }
}
