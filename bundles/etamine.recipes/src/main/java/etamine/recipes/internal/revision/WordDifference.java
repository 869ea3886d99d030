package etamine.recipes.internal.revision;

import etamine.recipes.Difference.Words;
import etamine.recipes.Difference.Words.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Two texts word by word, along a longest sequence of words that both have. */
final class WordDifference {
    private static final Pattern WORD = Pattern.compile("\\S+|\\s+");
    /** Above so many pairs of words a table of them would be too large; then the middle counts as written anew. */
    private static final int MOST_PAIRS = 4_000_000;

    private WordDifference() {}

    static List<Words> between(String before, String after) {
        List<String> older = words(before);
        List<String> newer = words(after);
        int start = 0;
        while (start < older.size() && start < newer.size() && older.get(start).equals(newer.get(start))) {
            start++;
        }
        int end = 0;
        while (end < older.size() - start
                && end < newer.size() - start
                && older.get(older.size() - 1 - end).equals(newer.get(newer.size() - 1 - end))) {
            end++;
        }
        List<Words> runs = new ArrayList<>();
        older.subList(0, start).forEach(word -> add(runs, Kind.SAME, word));
        middle(older.subList(start, older.size() - end), newer.subList(start, newer.size() - end), runs);
        older.subList(older.size() - end, older.size()).forEach(word -> add(runs, Kind.SAME, word));
        return List.copyOf(runs);
    }

    private static void middle(List<String> older, List<String> newer, List<Words> runs) {
        if ((long) older.size() * newer.size() > MOST_PAIRS) {
            older.forEach(word -> add(runs, Kind.REMOVED, word));
            newer.forEach(word -> add(runs, Kind.ADDED, word));
            return;
        }
        int[][] common = common(older, newer);
        int i = 0;
        int j = 0;
        while (i < older.size() || j < newer.size()) {
            boolean same = i < older.size() && j < newer.size() && older.get(i).equals(newer.get(j));
            if (same) {
                add(runs, Kind.SAME, newer.get(j++));
                i++;
            } else if (j == newer.size() || i < older.size() && common[i + 1][j] >= common[i][j + 1]) {
                add(runs, Kind.REMOVED, older.get(i++));
            } else {
                add(runs, Kind.ADDED, newer.get(j++));
            }
        }
    }

    /** How many words both have in one order from each pair of places on. */
    private static int[][] common(List<String> older, List<String> newer) {
        int[][] common = new int[older.size() + 1][newer.size() + 1];
        for (int i = older.size() - 1; i >= 0; i--) {
            for (int j = newer.size() - 1; j >= 0; j--) {
                boolean same = older.get(i).equals(newer.get(j));
                common[i][j] = same ? common[i + 1][j + 1] + 1 : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        return common;
    }

    private static void add(List<Words> runs, Kind kind, String word) {
        int last = runs.size() - 1;
        if (last >= 0 && runs.get(last).kind() == kind) {
            runs.set(last, new Words(kind, runs.get(last).text() + word));
        } else {
            runs.add(new Words(kind, word));
        }
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(text);
        while (matcher.find()) {
            words.add(matcher.group());
        }
        return words;
    }
}
