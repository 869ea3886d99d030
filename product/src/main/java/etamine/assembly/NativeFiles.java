package etamine.assembly;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/**
 * Unpacks the native libraries of the toolkit and the database once, so that no start has to, and nothing is left
 * behind in the home folder or the temporary folder.
 */
final class NativeFiles {
    private static final List<String> ENDINGS = List.of(".so", ".dll", ".jnilib", ".dylib");

    private NativeFiles() {}

    static void extract(Path bundles, Path target) throws IOException {
        for (Path jar : Assembly.list(bundles, "org.eclipse.platform.org.eclipse.swt.*")) {
            extract(jar, "", target);
        }
        for (Path jar : Assembly.list(bundles, "org.xerial.sqlite-jdbc-*")) {
            extract(jar, "org/sqlite/native/" + os() + '/' + arch() + '/', target);
        }
    }

    private static void extract(Path jar, String folder, Path target) throws IOException {
        try (JarFile file = new JarFile(jar.toFile());
                Stream<? extends ZipEntry> entries = file.stream()) {
            for (ZipEntry entry :
                    entries.filter(each -> isLibrary(each.getName(), folder)).toList()) {
                try (InputStream in = file.getInputStream(entry)) {
                    Files.copy(in, target.resolve(entry.getName().substring(folder.length())));
                }
            }
        }
    }

    private static boolean isLibrary(String name, String folder) {
        return name.startsWith(folder)
                && name.indexOf('/', folder.length()) < 0
                && ENDINGS.stream().anyMatch(name::endsWith);
    }

    private static String os() {
        String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        return name.startsWith("win") ? "Windows" : name.startsWith("mac") ? "Mac" : "Linux";
    }

    private static String arch() {
        String name = System.getProperty("os.arch");
        return name.equals("amd64") ? "x86_64" : name;
    }
}
