package etamine.checks.product;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import javax.tools.JavaCompiler;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** A module somebody else wrote, compiled and packed on the spot: one class, with what stands in it. */
final class GuestModule {
    private final String name;
    private final String statement;

    /**
     * A module.
     *
     * @param name its symbolic name, which is also its package
     * @param statement what its class does when it starts
     */
    GuestModule(String name, String statement) {
        this.name = name;
        this.statement = statement;
    }

    /** Packs it as a bundle whose activator does it. */
    void packAsActivator(Path folder, String imports) throws IOException {
        byte[] code = compiled(
                folder,
                "implements org.osgi.framework.BundleActivator",
                "public void start(org.osgi.framework.BundleContext context) throws Exception { " + statement + " }"
                        + " public void stop(org.osgi.framework.BundleContext context) {}");
        pack(
                folder,
                Map.of("Bundle-Activator", name + ".Guest", "Import-Package", imports),
                Map.of(name.replace('.', '/') + "/Guest.class", code));
    }

    /** Packs it as a bundle whose component does it when it is made. */
    void packAsComponent(Path folder) throws IOException {
        byte[] code = compiled(
                folder,
                "implements Runnable",
                "public Guest() throws Exception { " + statement + " } public void run() {}");
        String component = "<scr:component xmlns:scr=\"http://www.osgi.org/xmlns/scr/v1.4.0\" immediate=\"true\""
                + " name=\"" + name + ".Guest\"><implementation class=\"" + name + ".Guest\"/>"
                + "<service><provide interface=\"java.lang.Runnable\"/></service></scr:component>";
        pack(
                folder,
                Map.of("Service-Component", "OSGI-INF/guest.xml"),
                Map.of(
                        name.replace('.', '/') + "/Guest.class",
                        code,
                        "OSGI-INF/guest.xml",
                        component.getBytes(StandardCharsets.UTF_8)));
    }

    private byte[] compiled(Path folder, String kind, String body) throws IOException {
        String source = "package " + name + "; public class Guest " + kind + " { " + body + " }";
        Path classes = Files.createDirectories(folder.resolveSibling("classes-" + name));
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> options =
                List.of("-d", classes.toString(), "-cp", System.getProperty("java.class.path"), "-proc:none");
        URI place = URI.create("string:///" + name.replace('.', '/') + "/Guest.java");
        boolean done = compiler.getTask(null, null, null, options, null, List.of(new Source(place, source)))
                .call();
        if (!done) {
            throw new IOException("The guest does not compile: " + source);
        }
        return Files.readAllBytes(classes.resolve(name.replace('.', '/')).resolve("Guest.class"));
    }

    private void pack(Path folder, Map<String, String> headers, Map<String, byte[]> files) throws IOException {
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.putValue("Bundle-ManifestVersion", "2");
        main.putValue("Bundle-SymbolicName", name);
        main.putValue("Bundle-Version", "1.0.0");
        headers.forEach(main::putValue);
        try (OutputStream file = Files.newOutputStream(folder.resolve(name + ".jar"));
                JarOutputStream jar = new JarOutputStream(file, manifest)) {
            for (Map.Entry<String, byte[]> entry : files.entrySet()) {
                jar.putNextEntry(new JarEntry(entry.getKey()));
                jar.write(entry.getValue());
            }
        }
    }

    private static final class Source extends SimpleJavaFileObject {
        private final String text;

        Source(URI place, String text) {
            super(place, Kind.SOURCE);
            this.text = text;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }
}
