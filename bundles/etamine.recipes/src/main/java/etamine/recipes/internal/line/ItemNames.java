package etamine.recipes.internal.line;

import etamine.base.MapChanges;
import etamine.kitchen.find.NameMatch;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Unit;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Items by what people call them: name or id, any case, in singular or plural; the part of a name before its comma too
 * where only one item is called so.
 */
public final class ItemNames {
    /** Beyond one item in so many it is quicker to begin anew. */
    private static final int MANY = 8;

    private final Map<String, Item> items;
    private final Set<String> hidden;
    private final NameClaims ids;
    private final NameClaims names;
    private final NameClaims shortNames;
    private final NameClaims longWords;
    private final NearNames near;

    /** The names of these items; those hidden are understood, but not offered. */
    ItemNames(Map<String, Item> items, Set<String> hidden) {
        this.items = items;
        this.hidden = hidden;
        ids = new NameClaims();
        names = new NameClaims();
        shortNames = new NameClaims();
        longWords = new NameClaims();
        near = new NearNames(items.values(), hidden);
        items.values().forEach(item -> claim(item, NameClaims::add));
    }

    private ItemNames(ItemNames before, Map<String, Item> items, Set<String> hidden, NearNames near) {
        this.items = items;
        this.hidden = hidden;
        ids = new NameClaims(before.ids);
        names = new NameClaims(before.names);
        shortNames = new NameClaims(before.shortNames);
        longWords = new NameClaims(before.longWords);
        this.near = near;
    }

    /** The names of these items, of which only those are read that are not the same as now. */
    ItemNames with(Map<String, Item> fresh, Set<String> without) {
        Set<String> changed = MapChanges.between(items, fresh);
        if (changed.size() > fresh.size() / MANY) {
            return new ItemNames(fresh, without);
        }
        List<Item> gone = in(items, changed);
        List<Item> come = in(fresh, changed);
        NearNames nearNow =
                hidden.equals(without) ? near.with(gone, come, fresh.values()) : new NearNames(fresh.values(), without);
        ItemNames mended = new ItemNames(this, fresh, without, nearNow);
        gone.forEach(item -> mended.claim(item, NameClaims::remove));
        come.forEach(item -> mended.claim(item, NameClaims::add));
        return mended;
    }

    private static List<Item> in(Map<String, Item> items, Set<String> ids) {
        return ids.stream().flatMap(id -> Stream.ofNullable(items.get(id))).toList();
    }

    /** What is done with a word that an item goes by. */
    private interface Claim {
        void on(NameClaims claims, String word, Item item);
    }

    private void claim(Item item, Claim claim) {
        String name = plain(item.name());
        claim.on(ids, plain(item.id()), item);
        claim.on(names, name, item);
        singulars(name).forEach(form -> claim.on(shortNames, form, item));
        int comma = name.indexOf(',');
        if (comma > 0) {
            claim.on(shortNames, name.substring(0, comma), item);
            singulars(name.substring(0, comma)).forEach(form -> claim.on(shortNames, form, item));
        }
        TypedAmount.own(item).stream()
                .map(Unit::symbol)
                .filter(word -> word.indexOf(' ') > 0)
                .forEach(word -> claim.on(longWords, word, item));
    }

    /** Whether these are the names of that map, the same one, with the same hidden. */
    boolean areOf(Map<String, Item> map, Set<String> without) {
        return items == map && hidden == without;
    }

    Optional<Item> find(String id) {
        return Optional.ofNullable(items.get(id));
    }

    /** The unit words of more than one word that items have of their own. */
    Set<String> longWords() {
        return longWords.words();
    }

    Optional<Item> byName(String text) {
        String name = plain(text);
        return exactly(name)
                .or(() ->
                        singulars(name).flatMap(form -> exactly(form).stream()).findFirst())
                .or(() -> shortNames.only(name))
                .or(() -> singulars(name)
                        .flatMap(form -> shortNames.only(form).stream())
                        .findFirst());
    }

    private Optional<Item> exactly(String plain) {
        return names.last(plain).or(() -> ids.last(plain));
    }

    /** The preparation of an item that a text names. */
    static Optional<String> preparation(Item item, String typed) {
        String plain = plain(typed);
        return item.preparations().stream()
                .map(Preparation::name)
                .filter(name -> name.equals(typed))
                .findFirst()
                .or(() -> item.preparations().stream()
                        .map(Preparation::name)
                        .filter(name -> plain(name).equals(plain))
                        .findFirst());
    }

    /** Names that may have been meant, likeliest first. */
    List<String> near(String typed, int atMost) {
        return Stream.concat(like(typed), near.to(plain(typed)))
                .distinct()
                .limit(atMost)
                .toList();
    }

    /** Names that have what was typed in them, best first. */
    private Stream<String> like(String typed) {
        NameMatch match = new NameMatch(typed);
        record Hit(String name, int rank) {}
        return items.values().stream()
                .filter(item -> !hidden.contains(item.id()))
                .map(Item::name)
                .flatMap(name -> match.rank(name).stream().mapToObj(rank -> new Hit(name, rank)))
                .sorted(Comparator.comparingInt(Hit::rank).thenComparing(Hit::name))
                .map(Hit::name)
                .distinct();
    }

    /** Names or, after a name and a comma, that name with each preparation that fits. */
    Stream<String> completions(String typed) {
        int comma = typed.indexOf(',');
        Optional<Item> item = comma < 0 ? Optional.empty() : byName(typed.substring(0, comma));
        if (item.isEmpty()) {
            return typed.isBlank() ? Stream.empty() : like(typed);
        }
        NameMatch match = new NameMatch(typed.substring(comma + 1));
        return item.get().preparations().stream()
                .map(Preparation::name)
                .filter(match::fits)
                .map(name -> item.get().name() + ", " + name);
    }

    /** What a plural may be the plural of. */
    private static Stream<String> singulars(String name) {
        if (!name.endsWith("s") || name.endsWith("ss") || name.length() < 4) {
            return Stream.empty();
        }
        String stem = name.substring(0, name.length() - 1);
        if (name.endsWith("ies")) {
            return Stream.of(name.substring(0, name.length() - 3) + "y", stem);
        }
        if (name.endsWith("ves")) {
            String root = name.substring(0, name.length() - 3);
            return Stream.of(root + "f", root + "fe", stem);
        }
        return name.endsWith("es") ? Stream.of(stem, name.substring(0, name.length() - 2)) : Stream.of(stem);
    }

    public static String plain(String text) {
        String lower = text.strip().toLowerCase(Locale.ROOT);
        for (int i = 0; i < lower.length(); i++) {
            if (lower.charAt(i) >= 128) {
                return Normalizer.normalize(lower, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
            }
        }
        return lower;
    }
}
