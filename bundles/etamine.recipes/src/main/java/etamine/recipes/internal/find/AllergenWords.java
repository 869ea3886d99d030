package etamine.recipes.internal.find;

import etamine.kitchen.allergen.Allergen;
import java.util.Collection;

/** Allergens as somebody types them. */
final class AllergenWords {
    private AllergenWords() {}

    /** Whether one of them goes by that word, or is a kind of what the word says: hake is a fish. */
    static boolean has(Collection<Allergen> allergens, String typed) {
        Allergen meant = Allergen.of(typed.strip());
        return allergens.stream().anyMatch(allergen -> is(allergen, meant, typed.strip()));
    }

    private static boolean is(Allergen allergen, Allergen meant, String typed) {
        if (allergen.word().equalsIgnoreCase(typed) || allergen.name().equalsIgnoreCase(typed)) {
            return true;
        }
        boolean sameKind = meant.substance()
                .flatMap(kind -> allergen.substance().map(kind.covers()::contains))
                .orElse(false);
        return sameKind && (meant.name().isEmpty() || meant.name().equalsIgnoreCase(allergen.name()));
    }
}
