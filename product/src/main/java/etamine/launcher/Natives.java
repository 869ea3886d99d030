package etamine.launcher;

import java.nio.file.Files;
import java.nio.file.Path;

/** Points the toolkit and the database at their unpacked native libraries; without the folder they unpack their own. */
final class Natives {

    private Natives() {}

    static void use(Path folder) {
        if (!Files.isDirectory(folder)) {
            return;
        }
        set("swt.library.path", folder.toString());
        String sqlite = System.mapLibraryName("sqlitejdbc");
        if (Files.exists(folder.resolve(sqlite))) {
            set("org.sqlite.lib.path", folder.toString());
            set("org.sqlite.lib.name", sqlite);
        }
        set("slf4j.internal.verbosity", "ERROR");
    }

    private static void set(String key, String value) {
        if (System.getProperty(key) == null) {
            System.setProperty(key, value);
        }
    }
}
