package etamine.recipes.internal.line;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Use;
import etamine.measures.Unit;
import etamine.recipes.UseLines.Part;
import etamine.recipes.UseLines.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads the words beside an amount: an item, a preparation behind or before it, what may stand in for it. Used for one line. */
final class ThingNames {
    private static final int WORDS = 6;
    private static final String OR = " or ";
    /** Words that say which of the kind to take; the kitchen buys what it buys, so they are passed over. */
    static final Pattern SIZES = Pattern.compile(
            "(?i)(?:extra[- ])?(?:small|medium|large|big|jumbo)(?:-?sized)?|fresh|ripe|good|whole|heaped|level|scant");

    private final ItemNames names;
    private final Map<Cut, Optional<Item>> looked = new HashMap<>();

    ThingNames(ItemNames names) {
        this.names = names;
    }

    Set<String> longWords() {
        return names.longWords();
    }

    /** Whether the unit of a line is one that everybody or its item knows. */
    boolean measures(Use use) {
        Unit unit = use.quantity().unit();
        return unit.system() != Unit.System.OWN
                || names.find(use.item())
                        .filter(item -> TypedAmount.own(item).contains(unit))
                        .isPresent();
    }

    private Optional<Item> byName(Cut name) {
        return looked.computeIfAbsent(name, cut -> names.byName(cut.text()));
    }

    /** What the words name, all of them; empty when nothing is called so. */
    Optional<NamedThing> exactly(Cut words) {
        if (words.isEmpty()) {
            return Optional.empty();
        }
        Optional<NamedThing> plain = byComma(words);
        if (plain.filter(NamedThing::isKnown).isPresent()) {
            return plain;
        }
        return or(words)
                .or(() -> sharedPreparation(words))
                .or(() -> preparedBefore(words))
                .or(() -> plain);
    }

    /** The longest name before a comma wins, since names may have commas themselves. */
    private Optional<NamedThing> byComma(Cut words) {
        String text = words.text();
        for (int end = text.length(); end > 0; end = text.lastIndexOf(',', end - 1)) {
            Cut name = words.before(end);
            Optional<Item> item = byName(name);
            if (item.isPresent()) {
                Cut rest = words.after(Math.min(end + 1, text.length()));
                Optional<String> as = Optional.of(rest.text())
                        .filter(typed -> !typed.isEmpty())
                        .map(typed -> ItemNames.preparation(item.get(), typed).orElse(typed));
                return Optional.of(NamedThing.of(item.get(), name, as, rest));
            }
        }
        return Optional.empty();
    }

    /** Takes what may stand in for the item off the end: {@code butter, melted or oil}. */
    private Optional<NamedThing> or(Cut words) {
        String lower = words.text().toLowerCase(Locale.ROOT);
        int at = lower.lastIndexOf(OR);
        if (at <= 0) {
            return Optional.empty();
        }
        Cut other = words.after(at + OR.length());
        Optional<Item> substitute = byName(other);
        return substitute.flatMap(
                item -> exactly(words.before(at)).filter(NamedThing::isKnown).map(named -> named.orElse(item, other)));
    }

    /** {@code butter or oil, melted}: the preparation is that of the first. */
    private Optional<NamedThing> sharedPreparation(Cut words) {
        String lower = words.text().toLowerCase(Locale.ROOT);
        int at = lower.indexOf(OR);
        int comma = at < 0 ? -1 : lower.indexOf(',', at);
        if (comma < 0) {
            return Optional.empty();
        }
        Optional<Item> first = byName(words.before(at));
        Cut other = words.part(at + OR.length(), comma);
        Optional<Item> substitute = byName(other);
        Cut rest = words.after(comma + 1);
        Optional<String> as = first.flatMap(item -> ItemNames.preparation(item, rest.text()));
        return as.isPresent() && substitute.isPresent()
                ? Optional.of(
                        NamedThing.of(first.get(), words.before(at), as, rest).orElse(substitute.get(), other))
                : Optional.empty();
    }

    /** {@code peeled celeriac} or {@code celeriac peeled}. */
    private Optional<NamedThing> preparedBefore(Cut words) {
        for (int start : words.wordStarts().stream().skip(1).limit(WORDS).toList()) {
            Cut first = words.before(start);
            Cut last = words.after(start);
            Optional<NamedThing> found = prepared(last, first).or(() -> prepared(first, last));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<NamedThing> prepared(Cut name, Cut preparation) {
        return byName(name)
                .flatMap(item -> ItemNames.preparation(item, preparation.text())
                        .map(as -> NamedThing.of(item, name, Optional.of(as), preparation)));
    }

    /** What is named when words in front or behind are left out, with those as notes or as not understood. */
    Optional<NamedThing> nearly(Cut words) {
        List<Integer> starts = words.wordStarts();
        for (int skip = 1; skip < Math.min(WORDS, starts.size()); skip++) {
            Cut left = words.before(starts.get(skip));
            Optional<NamedThing> named = exactly(words.after(starts.get(skip)));
            if (named.isPresent()) {
                return named.map(thing -> thing.with(left(left)));
            }
        }
        for (int keep = starts.size() - 1; keep > 0 && keep > starts.size() - WORDS; keep--) {
            Cut left = words.after(starts.get(keep));
            Optional<NamedThing> named = exactly(words.before(starts.get(keep)));
            if (named.isPresent()) {
                return named.map(thing -> thing.with(new Span(Part.UNKNOWN, left.from(), left.to())));
            }
        }
        return Optional.empty();
    }

    private static Span left(Cut words) {
        List<String> all = new ArrayList<>(List.of(words.text().split("[ ,]+")));
        boolean sizes = all.stream().allMatch(word -> SIZES.matcher(word).matches());
        return new Span(sizes ? Part.NOTE : Part.UNKNOWN, words.from(), words.to());
    }
}
