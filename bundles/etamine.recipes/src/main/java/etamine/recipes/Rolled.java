package etamine.recipes;

import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.allergen.DeclarationList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What everything in a recipe or item comes to. Neither cooking nor a tiny amount takes anything away.
 *
 * @param id the recipe's or item's identifier
 * @param name what it is called
 * @param made whether it is made of other things
 * @param contains every allergen that something in it contains
 * @param mayContain every allergen that something in it may contain and nothing contains
 * @param known whether the allergens of everything in it are established
 * @param diets for every diet that the book speaks of, whether it suits
 */
public record Rolled(
        String id,
        String name,
        boolean made,
        Set<Allergen> contains,
        Set<Allergen> mayContain,
        boolean known,
        Map<String, Suitability> diets) {

    /** Copies the collections. */
    public Rolled {
        contains = Set.copyOf(contains);
        mayContain = Set.copyOf(mayContain);
        diets = Map.copyOf(diets);
    }

    /** What a list asks to declare of it. */
    public AllergenSheet by(DeclarationList list) {
        List<AllergenSheet.Row> rows = list.groups().stream()
                .map(group -> SheetRow.of(this, list, group))
                .toList();
        return new AllergenSheet(list, rows, unlisted(list, contains), unlisted(list, mayContain));
    }

    private static List<Allergen> unlisted(DeclarationList list, Set<Allergen> allergens) {
        return allergens.stream()
                .filter(allergen -> list.judge(allergen).isEmpty())
                .sorted(SheetRow.BY_WORDS)
                .toList();
    }
}
