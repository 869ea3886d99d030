package etamine.launcher;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Works out which features to start: the chosen ones after everything they need. */
final class Choice {
    private final Map<String, FeatureList> known;
    private final boolean window;
    private final Map<String, FeatureList> chosen = new LinkedHashMap<>();

    private Choice(Map<String, FeatureList> known, boolean window) {
        this.known = known;
        this.window = window;
    }

    /**
     * The chosen features in the order they start, without those that only the window needs unless there is one.
     *
     * @throws StartException if a feature is not there
     */
    static List<FeatureList> of(Path folder, Collection<String> names, boolean window) throws StartException {
        Choice choice = new Choice(readAll(folder), window);
        for (String name : names) {
            choice.add(name, List.of());
        }
        return List.copyOf(choice.chosen.values());
    }

    private void add(String name, List<String> path) throws StartException {
        if (path.contains(name)) {
            throw new StartException("The features need each other in a circle: " + String.join(", ", path) + '.');
        }
        FeatureList feature = Optional.ofNullable(known.get(name))
                .orElseThrow(() -> new StartException(
                        "There is no feature " + name + ". There are: " + String.join(", ", known.keySet()) + '.'));
        if (chosen.containsKey(name) || feature.window() && !window) {
            return;
        }
        List<String> further = new ArrayList<>(path);
        further.add(name);
        for (String need : feature.needs()) {
            add(need, further);
        }
        chosen.put(name, feature);
    }

    private static Map<String, FeatureList> readAll(Path folder) throws StartException {
        Map<String, FeatureList> lists = new TreeMap<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.list")) {
            for (Path file : files) {
                String name = file.getFileName().toString().replace(".list", "");
                lists.put(name, FeatureList.parse(name, Files.readAllLines(file)));
            }
        } catch (IOException e) {
            throw new StartException("The program folder is not complete: cannot read " + folder + '.', e);
        }
        return lists;
    }
}
