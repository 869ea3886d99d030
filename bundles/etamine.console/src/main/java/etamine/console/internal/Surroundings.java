package etamine.console.internal;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * What the console was started in.
 *
 * @param folder where relative names start
 * @param usualBook where the book is when the call does not say
 * @param version of the program
 * @param failures modules that did not start, with the reason
 * @param debug whether stack traces are wanted
 */
record Surroundings(Path folder, String usualBook, String version, Map<String, String> failures, boolean debug) {

    /** Where the book of a call is: an address as it is, a file as an absolute path. */
    String location(Optional<String> said) {
        String place = said.orElse(usualBook);
        return place.startsWith("jdbc:")
                ? place
                : folder.resolve(place).normalize().toString();
    }
}
