package etamine.costing.internal.words;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Ids that somebody may have meant who typed one there is not. */
public final class LikelyIds {
    private static final int MOST = 3;
    private static final int FARTHEST = 3;

    private LikelyIds() {}

    /** A sentence naming the likeliest of them; empty when none is near. */
    public static String hint(String typed, Collection<String> ids) {
        List<String> near = near(typed, ids);
        return near.isEmpty() ? "" : " Did you mean " + String.join(" or ", near) + "?";
    }

    /** The nearest first: those that contain what was typed, then those a few letters away. */
    static List<String> near(String typed, Collection<String> ids) {
        String wanted = typed.toLowerCase(Locale.ROOT);
        int farthest = Math.max(1, Math.min(FARTHEST, wanted.length() / 3));
        return ids.stream()
                .filter(id -> distance(wanted, id) <= farthest)
                .sorted(Comparator.comparingInt((String id) -> distance(wanted, id))
                        .thenComparing(id -> id))
                .limit(MOST)
                .toList();
    }

    private static int distance(String typed, String id) {
        String other = id.toLowerCase(Locale.ROOT);
        if (typed.length() >= FARTHEST && other.contains(typed)) {
            return 0;
        }
        if (Math.abs(typed.length() - other.length()) > FARTHEST || typed.length() <= FARTHEST) {
            return typed.equals(other) ? 0 : FARTHEST + 1;
        }
        return edits(typed, other);
    }

    /** V. Levenshtein's edit distance, row by row. */
    private static int edits(String one, String other) {
        int[] row = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int above = row[j];
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(above, row[j - 1]) + 1, diagonal + change);
                diagonal = above;
            }
        }
        return row[other.length()];
    }
}
