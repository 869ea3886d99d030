package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.allergen.Substance;
import etamine.kitchen.item.Allergens;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The allergens of an ingredient as rows of word, state and name, and back. The usual ones have a row each, whatever is
 * known of them, so that going through them once establishes both lists.
 */
final class AllergenText {
    static final String CONTAINS = "contains";
    static final String MAY_CONTAIN = "may contain";
    static final String NO = "no";
    static final String UNKNOWN = "unknown";
    static final List<String> STATES = List.of(CONTAINS, MAY_CONTAIN, NO, UNKNOWN);
    private static final List<Substance> USUAL = List.of(
            Substance.GLUTEN,
            Substance.CRUSTACEAN,
            Substance.EGG,
            Substance.FISH,
            Substance.PEANUT,
            Substance.SOY,
            Substance.MILK,
            Substance.NUTS,
            Substance.CELERY,
            Substance.MUSTARD,
            Substance.SESAME,
            Substance.SULPHITES,
            Substance.LUPIN,
            Substance.MOLLUSC);

    private AllergenText() {}

    static List<List<String>> rows(Allergens allergens) {
        return words(allergens).stream()
                .map(word ->
                        List.of(word, state(allergens, word), allergens.named().getOrDefault(word, "")))
                .toList();
    }

    /** The usual ones in their order, each in the word this ingredient has for it, then what else it has. */
    private static List<String> words(Allergens allergens) {
        Set<String> own = new TreeSet<>(allergens.contains());
        own.addAll(allergens.mayContain());
        own.addAll(allergens.named().keySet());
        List<String> words = new ArrayList<>();
        for (Substance usual : USUAL) {
            List<String> same = own.stream()
                    .filter(word -> Allergen.of(word).substance().equals(Optional.of(usual)))
                    .toList();
            words.addAll(same.isEmpty() ? List.of(usual.word()) : same);
            own.removeAll(same);
        }
        words.addAll(own);
        return words;
    }

    private static String state(Allergens allergens, String word) {
        if (allergens.contains().contains(word)) {
            return CONTAINS;
        }
        if (allergens.mayContain().contains(word)) {
            return MAY_CONTAIN;
        }
        return allergens.known() ? NO : UNKNOWN;
    }

    /** Reads one row: word, state, name; an emptied row says nothing of its word any more. */
    static Attempt row(Allergens shown, int row, List<String> cells) {
        List<List<String>> rows = rows(shown);
        String old = row < rows.size() ? rows.get(row).get(0) : "";
        String word = cells.get(0).strip().toLowerCase(Locale.ROOT);
        String state = state(cells.get(1).strip().toLowerCase(Locale.ROOT));
        if (state.isEmpty()) {
            return new Attempt.Bad("Write contains, may contain, no or unknown.");
        }
        if (state.equals(NO) && !shown.known() && !word.isEmpty()) {
            return new Attempt.Bad("It counts as unknown until you tick above that all is written here.");
        }
        if (state.equals(UNKNOWN) && shown.known() && !cells.get(1).isBlank()) {
            return new Attempt.Bad("It is ticked above that all is written here; take the tick away first.");
        }
        return new Attempt.Edit(
                change(was -> changed(was, old, word, state, cells.get(2).strip())));
    }

    private static String state(String typed) {
        if (typed.isEmpty()) {
            return UNKNOWN;
        }
        return STATES.stream()
                .filter(state -> state.startsWith(typed))
                .findFirst()
                .orElse("");
    }

    private static Allergens changed(Allergens was, String old, String word, String state, String name) {
        Set<String> contains = new TreeSet<>(was.contains());
        Set<String> mayContain = new TreeSet<>(was.mayContain());
        Map<String, String> named = new HashMap<>(was.named());
        Stream.of(old, word).forEach(gone -> {
            contains.remove(gone);
            mayContain.remove(gone);
            named.remove(gone);
        });
        if (!word.isEmpty() && state.equals(CONTAINS)) {
            contains.add(word);
        }
        if (!word.isEmpty() && state.equals(MAY_CONTAIN)) {
            mayContain.add(word);
        }
        if (!name.isEmpty() && (contains.contains(word) || mayContain.contains(word))) {
            named.put(word, name);
        }
        return new Allergens(contains, mayContain, was.known(), named, was.sulphites());
    }

    static UnaryOperator<Ingredient> known(boolean known) {
        return change(was -> new Allergens(was.contains(), was.mayContain(), known, was.named(), was.sulphites()));
    }

    static UnaryOperator<Ingredient> change(UnaryOperator<Allergens> change) {
        return ingredient -> ingredient.with(item -> item.withAllergens(change.apply(item.allergens())));
    }

    /** Words of allergens that start so. */
    static List<String> words(String typed) {
        return starting(typed, Stream.of(Substance.values()).map(Substance::word));
    }

    /** Species, nuts and cereals that start so. */
    static List<String> names(String typed) {
        Stream<String> species = Stream.of(Substance.values()).flatMap(each -> each.species().stream());
        Stream<String> sorts = Stream.of(Substance.values())
                .filter(each -> !each.broad()
                        && !each.sort().isEmpty()
                        && each.species().isEmpty())
                .map(Substance::word);
        return starting(typed, Stream.concat(sorts, species));
    }

    static List<String> starting(String typed, Stream<String> words) {
        String part = typed.strip().toLowerCase(Locale.ROOT);
        return words.distinct().filter(word -> word.startsWith(part)).sorted().toList();
    }
}
