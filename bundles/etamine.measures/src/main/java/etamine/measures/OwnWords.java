package etamine.measures;

import java.util.Collection;
import java.util.stream.Stream;

/** Matches what was typed with the unit words an ingredient has, singular or plural. */
final class OwnWords {
    private OwnWords() {}

    /** The word among those known, or a new one. */
    static Unit match(String typed, Collection<Unit> known) {
        Unit word = Unit.word(typed);
        return known.stream()
                .filter(unit -> unit.equals(word))
                .findFirst()
                .or(() -> known.stream()
                        .filter(unit -> plurals(unit.symbol()).anyMatch(word.symbol()::equals))
                        .findFirst())
                .orElse(word);
    }

    private static Stream<String> plurals(String singular) {
        Stream<String> regular = Stream.of(singular + "s", singular + "es");
        if (singular.endsWith("y")) {
            return Stream.concat(regular, Stream.of(stem(singular, 1) + "ies"));
        }
        if (singular.endsWith("fe")) {
            return Stream.concat(regular, Stream.of(stem(singular, 2) + "ves"));
        }
        return singular.endsWith("f") ? Stream.concat(regular, Stream.of(stem(singular, 1) + "ves")) : regular;
    }

    private static String stem(String word, int without) {
        return word.substring(0, word.length() - without);
    }
}
