package etamine.recipes.internal.line;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Use;
import etamine.measures.QuantityText;
import etamine.recipes.UseLines;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lines about the items there are, whose names are read anew where an item or a recipe has changed. */
@Component
public final class TypedLines implements UseLines {
    private static final int LONGEST = 300;
    private static final int LONGEST_WITH_ITEMS = 1_000;
    private static final int SUGGESTIONS = 3;
    /** How many lines of one pasted list get suggestions; each takes a look at thousands of names. */
    private static final int SUGGESTED_LINES = 100;

    private static final Pattern NOTE = Pattern.compile("[(\\[][^()\\[\\]]*[)\\]]");

    private static final Pattern BASIS = Pattern.compile("(?i) (?:AP|EP)$");

    private final KnownItems known;
    private final MadeItems made;
    private volatile ItemNames latest = new ItemNames(Map.of(), Set.of());

    /** Lines about those items. */
    @Activate
    public TypedLines(@Reference KnownItems known, @Reference MadeItems made) {
        this.known = known;
        this.made = made;
    }

    @Override
    public Reading read(String text) {
        ItemNames names = names();
        return read(text, names, typed -> names.near(typed, SUGGESTIONS));
    }

    @Override
    public List<Pasted> readAll(String text) {
        ItemNames names = names();
        int[] left = {SUGGESTED_LINES};
        return PastedList.of(
                text, line -> read(line, names, typed -> left[0]-- > 0 ? names.near(typed, SUGGESTIONS) : List.of()));
    }

    private static Reading read(String text, ItemNames names, Function<String, List<String>> near) {
        SingleSpaced line = SingleSpaced.of(text);
        if (line.text().isEmpty() || line.text().length() > LONGEST_WITH_ITEMS) {
            return new Reading.Unclear("Write an amount and an item, such as 250 g butter.");
        }
        ThingNames things = new ThingNames(names);
        Reading whole = new LineReading(line.text(), things, near).read();
        if (whole instanceof Reading.Unclear && NOTE.matcher(text).find()) {
            return line.at(withoutNotes(line, things, near));
        }
        return line.at(whole);
    }

    /** Reads on with blanks in place of what stands in brackets, so that every place stays the same. */
    private static Reading withoutNotes(SingleSpaced line, ThingNames things, Function<String, List<String>> near) {
        List<Span> notes = new ArrayList<>();
        StringBuilder blanked = new StringBuilder(line.text());
        Matcher note = NOTE.matcher(line.text());
        while (note.find()) {
            notes.add(new Span(Part.NOTE, note.start(), note.end()));
            blanked.replace(note.start(), note.end(), " ".repeat(note.end() - note.start()));
        }
        SingleSpaced bare = SingleSpaced.of(blanked.toString());
        if (bare.text().isEmpty()) {
            return new Reading.Unclear("Write an amount and an item beside the remark, such as 250 g butter (soft).");
        }
        Reading reading = bare.at(new LineReading(bare.text(), things, near).read());
        List<Span> spans = new ArrayList<>(reading.spans());
        spans.addAll(notes);
        spans.sort(Comparator.comparingInt(Span::from));
        return SingleSpaced.withSpans(reading, spans);
    }

    /** By the item's name where that reads back as the same line, else by its id. */
    @Override
    public String write(Use use) {
        ItemNames names = names();
        String byName = line(use, id -> names.find(id).map(Item::name).orElse(id));
        boolean same = read(byName, names, typed -> List.of()) instanceof Reading.Clear clear
                && clear.use().equals(use);
        return same ? byName : line(use, id -> id);
    }

    private static String line(Use use, Function<String, String> name) {
        StringBuilder line = new StringBuilder(QuantityText.formatExact(use.quantity()))
                .append(' ')
                .append(name.apply(use.item()));
        use.as().ifPresent(as -> line.append(", ").append(as));
        use.substitutes().forEach(other -> line.append(" or ").append(name.apply(other)));
        boolean usual = use.basis() == (use.as().isPresent() ? Basis.EP : Basis.AP)
                && !BASIS.matcher(line).find();
        return usual ? line.toString() : line + " " + use.basis();
    }

    @Override
    public List<String> complete(String text, int atMost) {
        String line = text.stripLeading();
        if (line.length() > LONGEST) {
            return List.of();
        }
        Set<String> lines = new LinkedHashSet<>();
        String[] words = line.split(" ");
        for (int amount = Math.min(words.length - 1, 6); amount >= 1 && lines.isEmpty(); amount--) {
            String start = join(words, 0, amount);
            String rest = join(words, amount, words.length);
            names().completions(rest).limit(atMost).forEach(name -> lines.add(start + " " + name));
        }
        return lines.stream().limit(atMost).toList();
    }

    private ItemNames names() {
        Map<String, Item> all = known.items().map(Items::all).orElseGet(made::items);
        Set<String> archived = made.archived();
        ItemNames now = latest;
        if (!now.areOf(all, archived)) {
            now = now.with(all, archived);
            latest = now;
        }
        return now;
    }

    private static String join(String[] words, int from, int to) {
        return String.join(" ", List.of(words).subList(from, to));
    }
}
