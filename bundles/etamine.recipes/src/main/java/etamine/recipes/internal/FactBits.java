package etamine.recipes.internal;

import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Diet;
import etamine.kitchen.item.Item;
import etamine.measures.Ratio;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Every fact that the items of one moment state, each with a bit of its own. Filled once, then only read. */
public final class FactBits {
    private static final Fact UNESTABLISHED = new Fact.Unestablished();

    private final List<Fact> facts = new ArrayList<>();
    private final Map<Fact, Integer> bits = new HashMap<>();
    private final Map<String, Set<Allergen>> read = new HashMap<>();
    private final Map<Allergens, int[]> seenAllergens = new HashMap<>();
    private final Map<Diet, int[]> seenDiets = new HashMap<>();
    private final Set<String> diets = new TreeSet<>();

    /** The facts of these items; every diet is known before the first item is asked about it. */
    FactBits(Collection<Item> items) {
        bit(UNESTABLISHED);
        Set<Diet> said = new HashSet<>();
        items.forEach(item -> said.add(item.diet()));
        said.forEach(diet -> {
            diets.addAll(diet.suits());
            diets.addAll(diet.unsuited());
        });
        diets.forEach(diet -> {
            bit(new Fact.Unsuited(diet));
            bit(new Fact.Undecided(diet));
        });
        items.forEach(item -> stated(item));
    }

    int size() {
        return facts.size();
    }

    /** Whether every bit means the same there, so that rows of one may be read with the other. */
    boolean areLike(FactBits others) {
        return this == others || facts.equals(others.facts) && diets.equals(others.diets);
    }

    Set<String> diets() {
        return diets;
    }

    Fact fact(int bit) {
        return facts.get(bit);
    }

    /** The bit of a fact; -1 when nothing states it. */
    public int find(Fact fact) {
        return bits.getOrDefault(fact, -1);
    }

    public int unestablished() {
        return find(UNESTABLISHED);
    }

    /** What an item states of itself, as bits. */
    BitSet stated(Item item) {
        BitSet all = new BitSet(facts.size());
        for (int bit : seenAllergens.computeIfAbsent(item.allergens(), this::ofAllergens)) {
            all.set(bit);
        }
        for (int bit : seenDiets.computeIfAbsent(item.diet(), this::ofDiet)) {
            all.set(bit);
        }
        return all;
    }

    /** What is so of something of which nothing is stated. */
    BitSet unstated() {
        BitSet all = new BitSet(facts.size());
        all.set(unestablished());
        diets.forEach(diet -> all.set(find(new Fact.Undecided(diet))));
        return all;
    }

    private int[] ofAllergens(Allergens allergens) {
        BitSet all = new BitSet();
        allergens
                .contains()
                .forEach(word ->
                        meanings(word, allergens).forEach(allergen -> all.set(bit(new Fact.Contains(allergen)))));
        allergens
                .mayContain()
                .forEach(word ->
                        meanings(word, allergens).forEach(allergen -> all.set(bit(new Fact.MayContain(allergen)))));
        if (!allergens.known()) {
            all.set(unestablished());
        }
        return all.stream().toArray();
    }

    private Set<Allergen> meanings(String word, Allergens allergens) {
        String names = allergens.named().getOrDefault(word, "");
        Set<Allergen> plain = read.computeIfAbsent(word + "\n" + names, key -> Allergen.of(word, names));
        return allergens.sulphites().isEmpty()
                ? plain
                : measured(plain, Ratio.of(allergens.sulphites().get()));
    }

    private static Set<Allergen> measured(Set<Allergen> plain, Ratio amount) {
        Set<Allergen> all = new LinkedHashSet<>();
        plain.forEach(allergen -> all.add(allergen.isSulphites() ? allergen.measured(amount) : allergen));
        return all;
    }

    private int[] ofDiet(Diet diet) {
        return diets.stream()
                .flatMap(word -> stated(diet, word).stream())
                .mapToInt(this::bit)
                .toArray();
    }

    private static Optional<Fact> stated(Diet diet, String word) {
        if (diet.unsuited().contains(word)) {
            return Optional.of(new Fact.Unsuited(word));
        }
        return diet.suits().contains(word) ? Optional.empty() : Optional.of(new Fact.Undecided(word));
    }

    private int bit(Fact fact) {
        return bits.computeIfAbsent(fact, key -> {
            facts.add(key);
            return facts.size() - 1;
        });
    }
}
