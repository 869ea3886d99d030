package etamine.recipes.internal.line;

import etamine.kitchen.item.Item;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which items go by a word, those of one word in the order of their ids. Not thread-safe while it is filled. */
final class NameClaims {
    private final Map<String, List<Item>> claims;

    NameClaims() {
        claims = new HashMap<>();
    }

    /** A copy to be changed. */
    NameClaims(NameClaims before) {
        claims = new HashMap<>(before.claims);
    }

    void add(String word, Item item) {
        List<Item> others = claims.getOrDefault(word, List.of());
        if (others.isEmpty()) {
            claims.put(word, List.of(item));
        } else if (!others.contains(item)) {
            List<Item> all = new ArrayList<>(others);
            int at = all.size();
            while (at > 0 && all.get(at - 1).id().compareTo(item.id()) > 0) {
                at--;
            }
            all.add(at, item);
            claims.put(word, all);
        }
    }

    void remove(String word, Item item) {
        List<Item> left = claims.getOrDefault(word, List.of()).stream()
                .filter(each -> !each.id().equals(item.id()))
                .toList();
        if (left.isEmpty()) {
            claims.remove(word);
        } else {
            claims.put(word, left);
        }
    }

    /** The item that goes by a word; the last where several do. */
    Optional<Item> last(String word) {
        List<Item> all = claims.getOrDefault(word, List.of());
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** The item that alone goes by a word. */
    Optional<Item> only(String word) {
        List<Item> all = claims.getOrDefault(word, List.of());
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    Set<String> words() {
        return claims.keySet();
    }
}
