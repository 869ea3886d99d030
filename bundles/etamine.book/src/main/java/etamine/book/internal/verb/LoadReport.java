package etamine.book.internal.verb;

import etamine.kitchen.exchange.LoadResult;
import etamine.kitchen.exchange.LoadResult.Rejected;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What became of a load, for machines and for people.
 *
 * @param book where it was loaded to
 * @param made whether the book was made for it
 * @param result what became of it
 */
record LoadReport(String book, boolean made, LoadResult result) {

    Map<String, Object> json() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("book", book);
        json.put("made", made);
        json.put("written", result.written());
        json.put("accepted", result.accepted());
        json.put("kept", result.kept());
        json.put("rejected", result.rejected().stream().map(LoadReport::json).toList());
        json.put("doubts", result.doubts().stream().map(LoadReport::json).toList());
        json.put("filed", result.filed().stream().map(Path::toString).toList());
        return json;
    }

    private static Map<String, Object> json(Rejected rejected) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", rejected.file().toString());
        json.put("pointer", rejected.pointer());
        json.put("problem", rejected.problem());
        return json;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (made) {
            lines.add("Made the book " + book + ".");
        }
        result.rejected().forEach(rejected -> lines.add(line(rejected)));
        if (!result.written()) {
            lines.add(count(result.rejected().size(), "problem") + "; nothing was written. Mend "
                    + (result.rejected().size() == 1 ? "it" : "them")
                    + " and load again, or write the rest with --accept-good.");
            return lines;
        }
        lines.add("Loaded " + list(result.accepted()) + ".");
        result.doubts().forEach(doubt -> lines.add("Look at " + line(doubt)));
        if (!result.kept().isEmpty()) {
            lines.add("Kept untouched, because no installed module owns it: " + list(result.kept()) + ".");
        }
        result.filed().forEach(file -> lines.add("Filed the rejected with their reasons in " + file + "."));
        return lines;
    }

    private static String line(Rejected rejected) {
        return rejected.file().getFileName() + " " + rejected.pointer() + ": " + rejected.problem();
    }

    private static String list(Map<String, Integer> counts) {
        String list = counts.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .map(entry -> entry.getKey() + " " + entry.getValue())
                .collect(Collectors.joining(", "));
        return list.isEmpty() ? "nothing" : list;
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
