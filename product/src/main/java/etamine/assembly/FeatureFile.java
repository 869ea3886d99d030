package etamine.assembly;

import jakarta.json.Json;
import jakarta.json.JsonObject;
import jakarta.json.JsonReader;
import jakarta.json.JsonString;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.felix.feature.impl.FeatureServiceImpl;
import org.osgi.service.feature.Feature;
import org.osgi.service.feature.FeatureBundle;
import org.osgi.service.feature.ID;

/**
 * One installable choice, as written in the OSGi feature form.
 *
 * @param name its file name without the ending
 * @param header the lines of the flat list that come before the bundles
 * @param bundles its bundles in the order they start
 */
record FeatureFile(String name, List<String> header, List<Entry> bundles) {
    private static final String CHOICE = "etamine-choice";

    /**
     * One bundle of a feature.
     *
     * @param id its Maven coordinates
     * @param os the only operating system it is for; empty for all
     * @param arch the only processor it is for; empty for all
     */
    record Entry(ID id, String os, String arch) {

        String fileName() {
            return id.getGroupId() + '.' + id.getArtifactId() + '-' + id.getVersion() + ".jar";
        }

        boolean everywhere() {
            return os.isEmpty();
        }

        String line() {
            return everywhere() ? "bundle " + fileName() : "bundle " + fileName() + ' ' + os + ' ' + arch;
        }
    }

    static FeatureFile read(Path file) throws IOException {
        String name = file.getFileName().toString().replaceFirst("\\.json$", "");
        try (Reader reader = Files.newBufferedReader(file)) {
            Feature feature = new FeatureServiceImpl().readFeature(reader);
            return new FeatureFile(
                    name,
                    header(feature),
                    feature.getBundles().stream().map(FeatureFile::entry).toList());
        }
    }

    private static Entry entry(FeatureBundle bundle) {
        return new Entry(bundle.getID(), text(bundle, "os"), text(bundle, "arch"));
    }

    private static String text(FeatureBundle bundle, String key) {
        return String.valueOf(bundle.getMetadata().getOrDefault(key, ""));
    }

    private static List<String> header(Feature feature) throws IOException {
        if (!feature.getExtensions().containsKey(CHOICE)) {
            throw new IOException("Feature " + feature.getID() + " lacks the extension " + CHOICE + '.');
        }
        List<String> lines = new ArrayList<>();
        lines.add("# " + feature.getName().orElse(""));
        try (JsonReader reader = Json.createReader(
                new StringReader(feature.getExtensions().get(CHOICE).getJSON()))) {
            JsonObject choice = reader.readObject();
            for (JsonString need : choice.getJsonArray("needs").getValuesAs(JsonString.class)) {
                lines.add("needs " + need.getString());
            }
            for (String flag : List.of("window", "vital")) {
                if (choice.getBoolean(flag)) {
                    lines.add(flag);
                }
            }
        }
        return lines;
    }
}
