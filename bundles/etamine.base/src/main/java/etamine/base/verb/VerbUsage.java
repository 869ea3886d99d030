package etamine.base.verb;

import java.util.ArrayList;
import java.util.List;

/**
 * How a verb is called.
 *
 * @param name the verb as typed
 * @param summary one line for the list of verbs
 * @param arguments positional arguments in order, as shown in help: {@code ID}, {@code [ID...]}, {@code FILE}; square
 *     brackets mean optional, three dots mean repeatable
 * @param options what may follow with two dashes
 * @param needsBook whether a book has to be open before the verb runs
 */
public record VerbUsage(String name, String summary, List<String> arguments, List<Option> options, boolean needsBook) {

    /**
     * One option.
     *
     * @param name with its dashes, such as {@code --from}
     * @param value what follows, such as {@code DATE}; empty for a flag
     * @param help one line
     */
    public record Option(String name, String value, String help) {}

    /** Copies the lists. */
    public VerbUsage {
        arguments = List.copyOf(arguments);
        options = List.copyOf(options);
    }

    /** A verb that works on the open book and takes these arguments. */
    public static VerbUsage of(String name, String summary, String... arguments) {
        return new VerbUsage(name, summary, List.of(arguments), List.of(), true);
    }

    /** The same verb with one more option; an empty {@code value} makes it a flag. */
    public VerbUsage with(String option, String value, String help) {
        List<Option> more = new ArrayList<>(options);
        more.add(new Option(option, value, help));
        return new VerbUsage(name, summary, arguments, more, needsBook);
    }

    /** The same verb, for when no book is open. */
    public VerbUsage withoutBook() {
        return new VerbUsage(name, summary, arguments, options, false);
    }
}
