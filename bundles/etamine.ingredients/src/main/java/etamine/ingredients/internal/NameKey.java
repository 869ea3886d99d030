package etamine.ingredients.internal;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A name without what people write now so and now so: case, accents, signs, the order of the words, the plural.
 *
 * @param words the words in order
 */
record NameKey(List<String> words) {
    private static final int SHORT = 4;
    private static final int LONG = 9;
    private static final int TOO_LONG_FOR_TWO = 20;
    private static final int TOO_LONG = 40;

    static NameKey of(String name) {
        String bare = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD)
                .replaceAll("\\p{Mn}+", "")
                .replaceAll("['’]", "");
        return new NameKey(Stream.of(bare.split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .map(NameKey::singular)
                .sorted()
                .toList());
    }

    String text() {
        return String.join(" ", words);
    }

    private static String singular(String word) {
        if (word.length() <= SHORT - 1 || !word.endsWith("s") || word.endsWith("ss") || word.endsWith("us")) {
            return word;
        }
        if (word.endsWith("ies")) {
            return word.substring(0, word.length() - 3) + "y";
        }
        return word.endsWith("oes") || word.endsWith("ches") || word.endsWith("shes")
                ? word.substring(0, word.length() - 2)
                : word.substring(0, word.length() - 1);
    }

    /**
     * How many letters may differ: none in short names, one, in long ones two; fewer again in very long ones, whose
     * shortened forms would be too many to keep.
     */
    int tolerance() {
        int length = text().length();
        if (length <= SHORT || length > TOO_LONG) {
            return 0;
        }
        return length < LONG || length > TOO_LONG_FOR_TWO ? 1 : 2;
    }

    /** The name with up to {@code most} letters left out: names that differ in so many letters share one of these. */
    Set<String> shortened(int most) {
        Set<String> all = new HashSet<>(Set.of(text()));
        Set<String> last = all;
        for (int i = 0; i < most; i++) {
            last = last.stream().flatMap(NameKey::withoutOne).collect(Collectors.toSet());
            all.addAll(last);
        }
        return all;
    }

    private static Stream<String> withoutOne(String text) {
        return Stream.iterate(0, at -> at < text.length(), at -> at + 1)
                .map(at -> text.substring(0, at) + text.substring(at + 1));
    }

    /** How many letters have to be put in, left out or changed to come from one to the other. */
    int distance(NameKey other) {
        String one = text();
        String two = other.text();
        int[] row = new int[two.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int corner = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int changed = corner + (one.charAt(i - 1) == two.charAt(j - 1) ? 0 : 1);
                corner = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[two.length()];
    }
}
