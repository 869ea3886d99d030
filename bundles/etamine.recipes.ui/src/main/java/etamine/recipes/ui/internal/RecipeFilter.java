package etamine.recipes.ui.internal;

import etamine.kitchen.allergen.Substance;
import etamine.kitchen.recipe.Kind;
import etamine.recipes.RecipeSearch.Wanted;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the list is narrowed to, as it stands in its fields.
 *
 * @param text words to find
 * @param kind a kind's label; empty for all
 * @param station a station; empty for any
 * @param free an allergen it must be known not to contain; empty for none
 * @param cost the most it may cost, as typed; nothing that can be read leaves it open
 * @param untested whether only drafts are wanted
 * @param archived whether archived ones are wanted instead of the others
 */
record RecipeFilter(
        String text, String kind, String station, String free, String cost, boolean untested, boolean archived) {
    /** Nothing is narrowed. */
    static final RecipeFilter NONE = new RecipeFilter("", "", "", "", "", false, false);

    private static final int ALL = 100_000;

    /** The allergens that can be asked for. */
    static List<String> allergens() {
        return Stream.of(Substance.values()).map(Substance::word).distinct().toList();
    }

    Wanted wanted() {
        return new Wanted(
                text.strip(),
                kind.isEmpty() ? Set.of() : Set.of(KindText.read(kind)),
                Set.of(),
                free.isEmpty() ? Set.of() : Set.of(free),
                most(),
                station,
                untested,
                archived,
                ALL);
    }

    private Optional<BigDecimal> most() {
        String plain = cost.replace(',', '.').strip();
        return plain.matches("[0-9]{1,9}(\\.[0-9]{1,4})?") ? Optional.of(new BigDecimal(plain)) : Optional.empty();
    }

    /** How many fields besides the words narrow the list. */
    int narrowing() {
        return (int)
                Stream.of(!kind.isEmpty(), !station.isEmpty(), !free.isEmpty(), most().isPresent(), untested, archived)
                        .filter(each -> each)
                        .count();
    }

    /** Whether neither words nor fields narrow the list. */
    boolean isOpen() {
        return text.isBlank() && narrowing() == 0;
    }

    /** What stands in place of the list when nothing fits. */
    String nothing() {
        return isOpen()
                ? "No recipes yet. A recipe is anything you make: a sauce, a plate, a bird taken apart."
                : "No recipe fits.";
    }

    /** All kinds, by label. */
    static List<String> kinds() {
        return Stream.of(Kind.values()).map(KindText::of).toList();
    }
}
