package etamine.launcher;

/**
 * One bundle of a feature, as the assembly wrote it.
 *
 * @param name its file in the bundles folder
 * @param os the only operating system it is for; empty for all
 * @param arch the only processor it is for; empty for all
 */
record BundleFile(String name, String os, String arch) {

    /** Reads {@code FILE} or {@code FILE OS ARCH}. */
    static BundleFile parse(String text) {
        String[] words = text.split(" ");
        return words.length == 3 ? new BundleFile(words[0], words[1], words[2]) : new BundleFile(words[0], "", "");
    }

    /** The framework does not look at the toolkit's own platform filter, so only the right one is installed. */
    boolean fits(Machine machine) {
        return os.isEmpty() || os.equals(machine.os()) && arch.equals(machine.arch());
    }
}
