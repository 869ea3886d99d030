package etamine.modules.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

/** Writes a bundle's jar for a test. */
final class TinyBundle {
    private final Manifest manifest = new Manifest();
    private final Map<String, byte[]> entries = new LinkedHashMap<>();

    TinyBundle(String symbolicName) {
        header(Attributes.Name.MANIFEST_VERSION.toString(), "1.0");
        header("Bundle-ManifestVersion", "2");
        header("Bundle-SymbolicName", symbolicName);
        header("Bundle-Version", "1.2.3");
    }

    TinyBundle header(String name, String value) {
        manifest.getMainAttributes().putValue(name, value);
        return this;
    }

    TinyBundle component(Class<?> type, String body) throws IOException {
        header("Service-Component", "OSGI-INF/one.xml");
        String xml = "<scr:component xmlns:scr='http://www.osgi.org/xmlns/scr/v1.3.0' name='" + type.getName()
                + "' immediate='true'><implementation class='" + type.getName() + "'/>" + body + "</scr:component>";
        entries.put("OSGI-INF/one.xml", xml.getBytes(StandardCharsets.UTF_8));
        String file = type.getName().replace('.', '/') + ".class";
        try (InputStream in = type.getClassLoader().getResourceAsStream(file)) {
            entries.put(file, in.readAllBytes());
        }
        return this;
    }

    Path write(Path jar) throws IOException {
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream zip = new JarOutputStream(out, manifest)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new JarEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        return jar;
    }
}
