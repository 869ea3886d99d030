package etamine.base.verb;

import etamine.base.Progress;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One call of a verb, already parsed by its {@link VerbUsage}.
 *
 * @param arguments the positional arguments
 * @param options the options given, by name with dashes; a flag has the value {@code true}
 * @param location where the book is: a file path or a JDBC URL
 * @param folder the folder that relative file names start from
 * @param progress where long work reports
 */
public record VerbCall(
        List<String> arguments, Map<String, String> options, String location, Path folder, Progress progress) {

    /** Copies the collections. */
    public VerbCall {
        arguments = List.copyOf(arguments);
        options = Map.copyOf(options);
    }

    /** The value of an option, when given. */
    public Optional<String> option(String name) {
        return Optional.ofNullable(options.get(name));
    }

    /** Whether a flag was given. */
    public boolean has(String flag) {
        return options.containsKey(flag);
    }

    /** The file that an argument or option names, resolved against the calling folder. */
    public Path file(String name) {
        return folder.resolve(name).normalize();
    }
}
