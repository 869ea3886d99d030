package etamine.kitchen.allergen;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads words of allergens: any case, singular or simple plural, with or without accents. */
final class AllergenWords {
    private static final Map<String, Allergen> KNOWN = known();

    private AllergenWords() {}

    static Allergen read(String written) {
        String word = written.strip();
        Allergen known = KNOWN.get(plain(word));
        return known != null ? known : new Allergen(word, Optional.empty(), "", Optional.empty());
    }

    static List<String> names(String names) {
        return Stream.of(names.split("[,;/&+]| and "))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    private static Map<String, Allergen> known() {
        Map<String, Allergen> words = new HashMap<>();
        for (Substance substance : Substance.values()) {
            String name = substance.namesItself() && !substance.sort().isEmpty() ? substance.word() : "";
            Allergen plain = new Allergen(substance.word(), Optional.of(substance), name, Optional.empty());
            words.put(plain(substance.word()), plain);
            substance.synonyms().forEach(synonym -> words.put(plain(synonym), plain));
            substance
                    .species()
                    .forEach(species -> words.put(
                            plain(species),
                            new Allergen(substance.word(), Optional.of(substance), species, Optional.empty())));
        }
        return Map.copyOf(words);
    }

    /** Folds case, accents and the plural of each word; what folds alike is the same word. */
    private static String plain(String text) {
        String bare = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .replace('’', '\'')
                .replaceAll("[\\s_-]+", " ")
                .strip();
        return Stream.of(bare.split(" ")).map(AllergenWords::singular).reduce("", (all, word) -> all + " " + word);
    }

    private static String singular(String word) {
        if (word.endsWith("ies") && word.length() > 4) {
            return word.substring(0, word.length() - 3) + "y";
        }
        if (word.endsWith("shes") || word.endsWith("oes")) {
            return word.substring(0, word.length() - 2);
        }
        return word.endsWith("s") && !word.endsWith("ss") && word.length() > 3
                ? word.substring(0, word.length() - 1)
                : word;
    }
}
