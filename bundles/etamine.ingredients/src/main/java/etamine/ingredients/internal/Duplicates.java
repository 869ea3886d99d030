package etamine.ingredients.internal;

import etamine.ingredients.Ingredient;
import etamine.ingredients.IngredientMerges.Likeness;
import etamine.kitchen.item.Item;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * Finds pairs of ingredients that may be the same: by their names, near names first by how few letters differ; that the
 * measures agree is a further sign. Names are compared only where they share a shortened form, so that thousands of
 * ingredients take no longer than their number.
 */
final class Duplicates {
    /** Nobody goes through more; a book in which everything has one name must not take for ever. */
    private static final int MOST = 500;

    private final ToIntFunction<Ingredient> weight;
    private final Map<String, List<Keyed>> byForm = new HashMap<>();
    private final List<Pair> pairs = new ArrayList<>();

    private record Keyed(Ingredient ingredient, NameKey key) {}

    private record Pair(Keyed one, Keyed other, int distance, boolean alike) {
        int rank() {
            return 2 * distance - (alike ? 1 : 0);
        }
    }

    private Duplicates(ToIntFunction<Ingredient> weight) {
        this.weight = weight;
    }

    /**
     * The pairs, the likeliest first.
     *
     * @param weight how much speaks of an ingredient; the heavier one of a pair comes first
     */
    static List<Likeness> of(Collection<Ingredient> all, ToIntFunction<Ingredient> weight) {
        Duplicates search = new Duplicates(weight);
        all.stream().takeWhile(ingredient -> search.pairs.size() < MOST).forEach(search::add);
        return search.pairs.stream()
                .limit(MOST)
                .sorted(Comparator.comparingInt(Pair::rank)
                        .thenComparing(pair -> pair.one.ingredient.item().name()))
                .map(search::likeness)
                .toList();
    }

    private void add(Ingredient ingredient) {
        Keyed fresh = new Keyed(ingredient, NameKey.of(ingredient.item().name()));
        Set<Keyed> compared = new HashSet<>();
        String digits = digits(fresh.key);
        for (String form : fresh.key.shortened(fresh.key.tolerance())) {
            List<Keyed> before = byForm.computeIfAbsent(digits + "/" + form, key -> new ArrayList<>(1));
            before.stream().filter(compared::add).forEach(known -> compare(known, fresh));
            before.add(fresh);
        }
    }

    private void compare(Keyed known, Keyed fresh) {
        int distance = known.key.distance(fresh.key);
        int allowed = Math.min(known.key.tolerance(), fresh.key.tolerance());
        if (distance <= allowed) {
            pairs.add(new Pair(known, fresh, distance, alike(known.ingredient.item(), fresh.ingredient.item())));
        }
    }

    /** Flour 405 and flour 550 are two things, however near their names: only names of the same digits are compared. */
    private static String digits(NameKey key) {
        return key.text().replaceAll("\\P{N}", "");
    }

    private static boolean alike(Item one, Item other) {
        return one.countIn().isLike(other.countIn())
                && !one.measures().isEmpty()
                && one.measures().stream().anyMatch(other.measures()::contains);
    }

    private Likeness likeness(Pair pair) {
        boolean turned = weight.applyAsInt(pair.other.ingredient) > weight.applyAsInt(pair.one.ingredient);
        Keyed one = turned ? pair.other : pair.one;
        Keyed other = turned ? pair.one : pair.other;
        return new Likeness(one.ingredient, other.ingredient, why(pair));
    }

    private static String why(Pair pair) {
        String names;
        if (pair.distance > 0) {
            names = pair.distance == 1 ? "one letter differs" : pair.distance + " letters differ";
        } else {
            boolean same = pair.one
                    .ingredient
                    .item()
                    .name()
                    .equalsIgnoreCase(pair.other.ingredient.item().name());
            names = same ? "the same name" : "the same words";
        }
        return pair.alike ? names + ", the same measures" : names;
    }
}
