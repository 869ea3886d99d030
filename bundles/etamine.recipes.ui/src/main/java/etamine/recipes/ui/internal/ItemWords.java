package etamine.recipes.ui.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Items by what people call them. */
final class ItemWords {
    private final Supplier<Optional<Items>> items;

    ItemWords(Supplier<Optional<Items>> items) {
        this.items = items;
    }

    String name(String id) {
        return find(id).map(Item::name).filter(name -> id(name).equals(id)).orElse(id);
    }

    Optional<Item> find(String id) {
        return items.get().flatMap(all -> all.find(id));
    }

    /** The item that is called so; a name nobody has yet becomes the id of something new. */
    String id(String name) {
        return items.get().map(all -> all.all().values().stream()).stream()
                .flatMap(all -> all)
                .filter(item -> item.name().equalsIgnoreCase(name) || item.id().equals(name))
                .map(Item::id)
                .findFirst()
                .orElseGet(() -> slug(name));
    }

    /** The ids of items whose names begin so, in small letters. */
    Set<String> beginning(String part) {
        return items.get().map(all -> all.all().values().stream()).stream()
                .flatMap(all -> all)
                .filter(item -> item.name().toLowerCase(Locale.ROOT).startsWith(part))
                .map(Item::id)
                .collect(Collectors.toSet());
    }

    List<String> complete(String typed) {
        String part = typed.strip().toLowerCase(Locale.ROOT);
        return items.get().map(all -> all.all().values().stream()).stream()
                .flatMap(all -> all)
                .map(Item::name)
                .filter(name -> !part.isEmpty() && name.toLowerCase(Locale.ROOT).contains(part))
                .limit(20)
                .toList();
    }

    private static String slug(String name) {
        String plain = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return plain.isEmpty() ? "made" : plain;
    }
}
