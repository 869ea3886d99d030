package etamine.launcher;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Where the book is: what {@code --book} says, else the variable ETAMINE_BOOK, else the person's data folder. */
final class BookPlace {
    private static final String OPTION = "--book";

    private BookPlace() {}

    static String of(List<String> arguments) {
        return option(arguments)
                .or(() -> Optional.ofNullable(System.getenv("ETAMINE_BOOK")))
                .orElseGet(() -> dataFolder(Machine.running().os())
                        .resolve("etamine")
                        .resolve("kitchen.etamine")
                        .toString());
    }

    private static Optional<String> option(List<String> arguments) {
        int at = arguments.indexOf(OPTION);
        if (at >= 0 && at + 1 < arguments.size()) {
            return Optional.of(arguments.get(at + 1));
        }
        return arguments.stream()
                .filter(word -> word.startsWith(OPTION + '='))
                .map(word -> word.substring(OPTION.length() + 1))
                .findFirst();
    }

    private static Path dataFolder(String os) {
        Path home = Path.of(System.getProperty("user.home"));
        return switch (os) {
            case "windows" -> variable("APPDATA").orElse(home.resolve("AppData").resolve("Roaming"));
            case "macos" -> home.resolve("Library").resolve("Application Support");
            default -> variable("XDG_DATA_HOME").orElse(home.resolve(".local").resolve("share"));
        };
    }

    private static Optional<Path> variable(String name) {
        return Optional.ofNullable(System.getenv(name))
                .filter(value -> !value.isBlank())
                .map(Path::of);
    }
}
