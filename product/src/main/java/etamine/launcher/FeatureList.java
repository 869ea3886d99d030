package etamine.launcher;

import java.util.ArrayList;
import java.util.List;

/**
 * One installable choice, as the assembly wrote it.
 *
 * @param name what it is called on the command line and in other lists
 * @param needs the features it cannot be without
 * @param window whether it is only for the window
 * @param vital whether the program is of no use when one of its bundles fails
 * @param bundles its bundles in the order they start
 */
record FeatureList(String name, List<String> needs, boolean window, boolean vital, List<BundleFile> bundles) {

    static FeatureList parse(String name, List<String> lines) {
        List<String> needs = new ArrayList<>();
        List<BundleFile> bundles = new ArrayList<>();
        for (String line : lines) {
            if (line.startsWith("needs ")) {
                needs.add(line.substring("needs ".length()));
            } else if (line.startsWith("bundle ")) {
                bundles.add(BundleFile.parse(line.substring("bundle ".length())));
            }
        }
        return new FeatureList(name, needs, lines.contains("window"), lines.contains("vital"), bundles);
    }
}
