package etamine.console.internal;

import etamine.base.verb.TextTable;
import etamine.base.verb.VerbUsage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What {@code --help} says. */
final class HelpPage {
    private HelpPage() {}

    /** How a verb is called, on one line. */
    static String call(VerbUsage usage) {
        StringBuilder call = new StringBuilder("etamine ").append(usage.name());
        usage.arguments().forEach(argument -> call.append(' ').append(argument));
        for (VerbUsage.Option option : usage.options()) {
            call.append(" [").append(option.name());
            call.append(option.value().isEmpty() ? "" : " " + option.value()).append(']');
        }
        return call.toString();
    }

    /** The page of all verbs. */
    static List<String> lines(List<VerbUsage> usages, String location, boolean open) {
        List<String> lines = new ArrayList<>();
        lines.add("etamine [--book FILE|jdbc-url] VERB [ARGUMENTS] [--json] [--quiet]");
        lines.add("");
        TextTable table = new TextTable("verb", "what it does");
        usages.forEach(usage -> table.row(usage.name(), summary(usage)));
        lines.addAll(table.lines());
        lines.add("");
        if (!open) {
            lines.add("More verbs come with an open book; there is none at " + location + " that can be opened now.");
        }
        lines.add("etamine VERB --help says more about a verb. The book is " + location + " unless --book or the");
        lines.add("variable ETAMINE_BOOK says otherwise. --json prints one JSON value and nothing else.");
        lines.add("Exit status: 0 done, 1 something to look at, 2 wrong call, 3 input rejected, 70 broken down.");
        return lines;
    }

    /** The page of one verb. */
    static List<String> lines(VerbUsage usage) {
        List<String> lines = new ArrayList<>(List.of(call(usage), "", summary(usage) + "."));
        if (!usage.options().isEmpty()) {
            TextTable table = new TextTable("option", "");
            usage.options().forEach(option -> table.row((option.name() + " " + option.value()).strip(), option.help()));
            lines.add("");
            lines.addAll(table.lines());
        }
        return lines;
    }

    /** The same for machines. */
    static Map<String, Object> json(VerbUsage usage) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("verb", usage.name());
        json.put("summary", summary(usage));
        json.put("call", call(usage));
        return json;
    }

    private static String summary(VerbUsage usage) {
        String text = usage.summary().replaceAll("\\.$", "");
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
