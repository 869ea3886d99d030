package etamine.ingredients.ui.internal;

import etamine.kitchen.item.Diet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The ways of eating an ingredient fits, as rows of word and state, and back. */
final class DietText {
    static final String SUITS = "suits";
    static final String UNSUITED = "does not";
    static final String UNKNOWN = "unknown";
    static final List<String> STATES = List.of(SUITS, UNSUITED, UNKNOWN);
    private static final List<String> USUAL = List.of("vegetarian", "vegan");

    private DietText() {}

    static List<List<String>> rows(Diet diet) {
        return words(diet).stream()
                .map(word -> List.of(word, state(diet, word)))
                .toList();
    }

    private static List<String> words(Diet diet) {
        Set<String> own = new TreeSet<>(diet.suits());
        own.addAll(diet.unsuited());
        USUAL.forEach(own::remove);
        List<String> words = new ArrayList<>(USUAL);
        words.addAll(own);
        return words;
    }

    private static String state(Diet diet, String word) {
        if (diet.suits().contains(word)) {
            return SUITS;
        }
        return diet.unsuited().contains(word) ? UNSUITED : UNKNOWN;
    }

    /** Reads one row: word and state; an emptied row says nothing of its word any more. */
    static Attempt row(Diet shown, int row, List<String> cells) {
        List<List<String>> rows = rows(shown);
        String old = row < rows.size() ? rows.get(row).get(0) : "";
        String word = cells.get(0).strip().toLowerCase(Locale.ROOT);
        String typed = cells.get(1).strip().toLowerCase(Locale.ROOT);
        String state = typed.isEmpty()
                ? UNKNOWN
                : STATES.stream()
                        .filter(each -> each.startsWith(typed))
                        .findFirst()
                        .orElse("");
        if (state.isEmpty()) {
            return new Attempt.Bad("Write suits, does not or unknown.");
        }
        return new Attempt.Edit(
                ingredient -> ingredient.with(item -> item.withDiet(changed(item.diet(), old, word, state))));
    }

    private static Diet changed(Diet was, String old, String word, String state) {
        Set<String> suits = new TreeSet<>(was.suits());
        Set<String> unsuited = new TreeSet<>(was.unsuited());
        Stream.of(old, word).forEach(gone -> {
            suits.remove(gone);
            unsuited.remove(gone);
        });
        if (!word.isEmpty() && state.equals(SUITS)) {
            suits.add(word);
        }
        if (!word.isEmpty() && state.equals(UNSUITED)) {
            unsuited.add(word);
        }
        return new Diet(suits, unsuited);
    }
}
