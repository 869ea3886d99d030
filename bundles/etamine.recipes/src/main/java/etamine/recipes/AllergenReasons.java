package etamine.recipes;

import etamine.kitchen.allergen.Allergen;
import java.util.List;
import java.util.Map;

/**
 * Why a recipe or item stands as it does. Each source is named once, by its shortest way; where there are very many,
 * the nearest are.
 *
 * @param rolled how it stands
 * @param contained for each allergen contained, the ways to what contains it
 * @param possible for each allergen that may be contained, the ways to what may
 * @param unknown the ways to what nobody has established
 * @param diets for each diet that it does not suit, the ways to what does not; for each that is unknown, the ways to
 *     what has not been said
 */
public record AllergenReasons(
        Rolled rolled,
        Map<Allergen, List<Way>> contained,
        Map<Allergen, List<Way>> possible,
        List<Way> unknown,
        Map<String, List<Way>> diets) {

    /** Copies the collections. */
    public AllergenReasons {
        contained = Map.copyOf(contained);
        possible = Map.copyOf(possible);
        unknown = List.copyOf(unknown);
        diets = Map.copyOf(diets);
    }

    /** The ways to what contains an allergen, or may. */
    public List<Way> ways(Allergen allergen) {
        return contained.getOrDefault(allergen, possible.getOrDefault(allergen, List.of()));
    }
}
