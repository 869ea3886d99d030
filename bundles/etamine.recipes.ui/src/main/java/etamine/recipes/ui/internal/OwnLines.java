package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Use;
import etamine.recipes.UseLines;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Reads the lines of one recipe. A part of a name of what the recipe makes itself means something else there: in the recipe
 * “Guinea fowl, broken down” a “guinea fowl” is what is taken apart, and new if nothing else is called so. The whole name is
 * left to be refused with the circle it makes.
 */
final class OwnLines implements UseLines {
    private final UseLines lines;
    private final Supplier<Set<String>> own;
    private final ItemWords words;

    /**
     * Reads for a recipe.
     *
     * @param own the ids of what it makes
     */
    OwnLines(UseLines lines, Supplier<Set<String>> own, ItemWords words) {
        this.lines = lines;
        this.own = own;
        this.words = words;
    }

    @Override
    public Reading read(String text) {
        return seen(text, lines.read(text));
    }

    @Override
    public List<Pasted> readAll(String text) {
        return lines.readAll(text).stream()
                .map(line -> new Pasted(
                        line.number(), line.text(), line.reading().map(reading -> seen(line.text(), reading))))
                .toList();
    }

    @Override
    public String write(Use use) {
        return lines.write(use);
    }

    @Override
    public List<String> complete(String text, int atMost) {
        return lines.complete(text, atMost);
    }

    private Reading seen(String text, Reading reading) {
        Optional<Span> item = reading.spans().stream()
                .filter(span -> span.part() == Part.ITEM && span.to() <= text.length())
                .findFirst();
        return item.filter(span -> isPartOfOwn(text.substring(span.from(), span.to())))
                .map(span -> unknown(text, reading, span))
                .orElse(reading);
    }

    private boolean isPartOfOwn(String typed) {
        Set<String> made = own.get();
        String part = typed.strip().toLowerCase(Locale.ROOT);
        boolean begins = made.stream()
                .map(id -> words.name(id).toLowerCase(Locale.ROOT))
                .anyMatch(name -> name.startsWith(part) && !name.equals(part));
        return begins && made.containsAll(words.beginning(part));
    }

    private static Reading unknown(String text, Reading reading, Span item) {
        List<Span> spans = new ArrayList<>();
        reading.spans().stream()
                .filter(span -> span.part() == Part.QUANTITY && span.to() <= item.from())
                .forEach(spans::add);
        int end = text.stripTrailing().length();
        spans.add(new Span(Part.UNKNOWN, item.from(), end));
        return new Reading.Unclear(
                "Nothing in the book but this recipe is called \u201c" + text.substring(item.from(), end) + "\u201d.",
                spans,
                List.of());
    }
}
