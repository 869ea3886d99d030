package etamine.recipes.internal;

import etamine.kitchen.find.NameMatch;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Items by what people call them: name or id, any case, in singular or simple plural. */
final class ItemNames {
    private final Map<String, Item> items;
    private final Map<String, Item> byName = new HashMap<>();

    /** An item named at the start of a text, and what follows the comma. */
    record Named(Item item, Optional<String> preparation) {}

    /** The names of these items. */
    ItemNames(Map<String, Item> items) {
        this.items = items;
        items.values().forEach(item -> byName.put(plain(item.id()), item));
        items.values().forEach(item -> byName.put(plain(item.name()), item));
    }

    /** Whether these are the names of that map, the same one. */
    boolean areOf(Map<String, Item> map) {
        return items == map;
    }

    Optional<Item> find(String id) {
        return Optional.ofNullable(items.get(id));
    }

    /** What the text names: the longest name before a comma wins, since names may have commas themselves. */
    Optional<Named> at(String text) {
        for (int end = text.length(); end > 0; end = text.lastIndexOf(',', end - 1)) {
            Optional<Item> item = byName(text.substring(0, end));
            if (item.isPresent()) {
                String rest = end < text.length() ? text.substring(end + 1).strip() : "";
                Optional<String> as = rest.isEmpty() ? Optional.empty() : Optional.of(known(item.get(), rest));
                return Optional.of(new Named(item.get(), as));
            }
        }
        return Optional.empty();
    }

    private Optional<Item> byName(String text) {
        String name = plain(text);
        return Stream.of(name, without(name, "s"), without(name, "es"))
                .flatMap(candidate -> Optional.ofNullable(byName.get(candidate)).stream())
                .findFirst();
    }

    private static String known(Item item, String typed) {
        return item.preparations().stream()
                .map(Preparation::name)
                .filter(name -> plain(name).equals(plain(typed)))
                .findFirst()
                .orElse(typed);
    }

    /** Names that fit what was typed, best first. */
    List<String> like(String typed, int atMost) {
        NameMatch match = new NameMatch(typed);
        record Hit(String name, int rank) {}
        return items.values().stream()
                .map(Item::name)
                .flatMap(name -> match.rank(name).stream().mapToObj(rank -> new Hit(name, rank)))
                .sorted(Comparator.comparingInt(Hit::rank).thenComparing(Hit::name))
                .map(Hit::name)
                .distinct()
                .limit(atMost)
                .toList();
    }

    /** Names or, after a name and a comma, that name with each preparation that fits. */
    Stream<String> completions(String typed) {
        int comma = typed.indexOf(',');
        Optional<Item> item = comma < 0 ? Optional.empty() : byName(typed.substring(0, comma));
        if (item.isEmpty()) {
            return typed.isBlank() ? Stream.empty() : like(typed, Integer.MAX_VALUE).stream();
        }
        NameMatch match = new NameMatch(typed.substring(comma + 1));
        return item.get().preparations().stream()
                .map(Preparation::name)
                .filter(match::fits)
                .map(name -> item.get().name() + ", " + name);
    }

    private static String without(String name, String ending) {
        return name.endsWith(ending) ? name.substring(0, name.length() - ending.length()) : name;
    }

    private static String plain(String text) {
        return Normalizer.normalize(text.strip().toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "");
    }
}
