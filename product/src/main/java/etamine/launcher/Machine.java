package etamine.launcher;

import java.util.Locale;

/**
 * What this program runs on.
 *
 * @param os {@code linux}, {@code windows} or {@code macos}
 * @param arch {@code x86_64} or {@code aarch64}
 */
record Machine(String os, String arch) {

    static Machine running() {
        return of(System.getProperty("os.name"), System.getProperty("os.arch"));
    }

    static Machine of(String osName, String osArch) {
        String name = osName.toLowerCase(Locale.ROOT);
        String os = name.startsWith("win") ? "windows" : name.startsWith("mac") ? "macos" : "linux";
        return new Machine(os, osArch.equals("amd64") ? "x86_64" : osArch);
    }
}
