package etamine.launcher;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What one start is asked to do.
 *
 * @param app the program folder that the assembly laid out
 * @param features the chosen features
 * @param mode {@code window} or {@code console}
 * @param arguments what the person typed after the program's name
 * @param properties what every bundle may ask the framework for
 * @param patience how long to wait for the window or the console to be ready
 */
public record Settings(
        Path app,
        List<String> features,
        String mode,
        List<String> arguments,
        Map<String, String> properties,
        Duration patience) {

    /** Copies the collections. */
    public Settings {
        features = List.copyOf(features);
        arguments = List.copyOf(arguments);
        properties = Map.copyOf(properties);
    }

    /** Settings from the command line: the mode first, then what the person typed. */
    static Settings of(String[] words) throws StartException {
        if (words.length == 0 || !words[0].equals("window") && !words[0].equals("console")) {
            throw new StartException("The launcher is called with 'window' or 'console' first.");
        }
        List<String> arguments = List.of(words).subList(1, words.length);
        Map<String, String> properties = new TreeMap<>();
        properties.put("etamine.folder", System.getProperty("user.dir"));
        properties.put("etamine.book", BookPlace.of(arguments));
        Path app = Path.of(System.getProperty("etamine.app", ".")).toAbsolutePath();
        properties.put(
                StoppedModules.PROPERTY,
                app.resolve("modules").resolve("stopped").toString());
        return new Settings(
                app,
                List.of(System.getProperty("etamine.features", "suite").split(",")),
                words[0],
                arguments,
                properties,
                Duration.ofSeconds(Long.getLong("etamine.patience", 30)));
    }

    boolean window() {
        return mode.equals("window");
    }
}
