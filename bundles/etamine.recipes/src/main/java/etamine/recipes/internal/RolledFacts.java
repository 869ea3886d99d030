package etamine.recipes.internal;

import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Diet;
import etamine.recipes.Suitability;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads rows of bits back into allergens and diets; rows that are alike give the same objects. Not thread-safe. */
public final class RolledFacts {
    private final FactBits facts;
    private final Map<BitSet, Read> seen = new HashMap<>();

    /** What a row says. */
    public record Read(
            Set<Allergen> contains, Set<Allergen> mayContain, boolean known, Map<String, Suitability> diets) {}

    public RolledFacts(FactBits facts) {
        this.facts = facts;
    }

    public Read read(BitSet row) {
        return seen.computeIfAbsent(row, this::fresh);
    }

    private Read fresh(BitSet row) {
        Set<Allergen> contains = new HashSet<>();
        Set<Allergen> mayContain = new HashSet<>();
        Map<String, Suitability> diets = new TreeMap<>();
        facts.diets().forEach(diet -> diets.put(diet, Suitability.SUITS));
        row.stream().mapToObj(facts::fact).forEach(fact -> {
            if (fact instanceof Fact.Contains said) {
                contains.add(said.allergen());
            } else if (fact instanceof Fact.MayContain said) {
                mayContain.add(said.allergen());
            } else if (fact instanceof Fact.Unsuited said) {
                diets.put(said.diet(), Suitability.UNSUITED);
            } else if (fact instanceof Fact.Undecided said) {
                diets.merge(said.diet(), Suitability.UNKNOWN, RolledFacts::worse);
            }
        });
        mayContain.removeAll(contains);
        return new Read(Set.copyOf(contains), Set.copyOf(mayContain), !row.get(facts.unestablished()), diets);
    }

    private static Suitability worse(Suitability one, Suitability other) {
        return one == Suitability.UNSUITED ? one : other;
    }

    /**
     * The same as the facts of an item. What goes into a made thing may have been measured; the made thing itself has
     * not, so it has no amount of sulphites.
     */
    static Allergens allergens(Read read) {
        Map<String, Set<String>> named = new TreeMap<>();
        Set<String> contains = words(read.contains(), named);
        Set<String> mayContain = words(read.mayContain(), named);
        mayContain.removeAll(contains);
        Map<String, String> names = new TreeMap<>();
        named.forEach((word, each) -> names.put(word, String.join(", ", each)));
        return new Allergens(contains, mayContain, read.known(), names, Optional.empty());
    }

    private static Set<String> words(Set<Allergen> allergens, Map<String, Set<String>> named) {
        Set<String> words = new HashSet<>();
        for (Allergen allergen : allergens) {
            words.add(allergen.word());
            if (!allergen.name().isEmpty() && !allergen.name().equals(allergen.word())) {
                named.computeIfAbsent(allergen.word(), key -> new TreeSet<>()).add(allergen.name());
            }
        }
        return words;
    }

    static Diet diet(Read read) {
        Set<String> suits = new HashSet<>();
        Set<String> unsuited = new HashSet<>();
        read.diets().forEach((diet, verdict) -> {
            if (verdict == Suitability.SUITS) {
                suits.add(diet);
            } else if (verdict == Suitability.UNSUITED) {
                unsuited.add(diet);
            }
        });
        return new Diet(suits, unsuited);
    }
}
