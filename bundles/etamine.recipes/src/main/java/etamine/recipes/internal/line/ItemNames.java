package etamine.recipes.internal.line;

import etamine.kitchen.find.NameMatch;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Unit;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
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
    private final Map<String, Item> items;
    private final Set<String> hidden;
    private final Map<String, Item> byName = new HashMap<>();
    private final Map<String, Item> byShortName = new HashMap<>();
    private final Set<String> longWords = new HashSet<>();
    private final NearNames near;

    /** The names of these items; those hidden are understood, but not offered. */
    ItemNames(Map<String, Item> items, Set<String> hidden) {
        this.items = items;
        this.hidden = hidden;
        Set<String> ambiguous = new HashSet<>();
        items.values().forEach(item -> byName.put(plain(item.id()), item));
        for (Item item : items.values()) {
            String name = plain(item.name());
            byName.put(name, item);
            singulars(name).forEach(form -> shortName(form, item, ambiguous));
            int comma = name.indexOf(',');
            if (comma > 0) {
                shortName(name.substring(0, comma), item, ambiguous);
                singulars(name.substring(0, comma)).forEach(form -> shortName(form, item, ambiguous));
            }
        }
        ambiguous.forEach(byShortName::remove);
        items.values()
                .forEach(item -> TypedAmount.own(item).stream()
                        .map(Unit::symbol)
                        .filter(word -> word.indexOf(' ') > 0)
                        .forEach(longWords::add));
        near = new NearNames(items.values(), hidden);
    }

    private void shortName(String name, Item item, Set<String> ambiguous) {
        Item other = byShortName.putIfAbsent(name, item);
        if (other != null && other != item) {
            ambiguous.add(name);
        }
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
        return longWords;
    }

    Optional<Item> byName(String text) {
        String name = plain(text);
        Item exact = byName.get(name);
        if (exact != null) {
            return Optional.of(exact);
        }
        return Stream.concat(singulars(name).map(byName::get), Stream.of(byShortName.get(name)))
                .filter(item -> item != null)
                .findFirst()
                .or(() -> singulars(name)
                        .map(byShortName::get)
                        .filter(item -> item != null)
                        .findFirst());
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
