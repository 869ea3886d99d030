package etamine.recipes.internal;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** A row of bits for each item, one after the other in one array. Not thread-safe while it is filled. */
final class FactRows {
    private final int width;
    private Map<String, Integer> places;
    private boolean placesShared;
    private long[] words;

    /** Rows of so many bits, with room for as many as are likely. */
    FactRows(int bits, int likely) {
        width = (bits + Long.SIZE - 1) / Long.SIZE;
        places = new HashMap<>(likely * 2);
        words = new long[Math.max(16, likely * width)];
    }

    /** A copy to be changed; the other is not changed any more. */
    FactRows(FactRows before) {
        width = before.width;
        places = before.places;
        placesShared = true;
        words = before.words.clone();
    }

    /** The row of an item; -1 when it has none. */
    int find(String item) {
        return places.getOrDefault(item, -1);
    }

    /** A new row for an item that has none. */
    int add(String item) {
        if (placesShared) {
            places = new HashMap<>(places);
            placesShared = false;
        }
        int row = places.size();
        places.put(item, row);
        if (words.length < places.size() * width) {
            words = Arrays.copyOf(words, places.size() * width * 2);
        }
        return row;
    }

    /** Words of a row by itself, to join others into. */
    long[] empty() {
        return new long[width];
    }

    /** Joins a row into words by themselves. */
    void joinInto(long[] into, int row) {
        for (int i = 0; i < width; i++) {
            into[i] |= words[row * width + i];
        }
    }

    /** Joins bits into words by themselves. */
    static void joinInto(long[] into, BitSet bits) {
        long[] more = bits.toLongArray();
        for (int i = 0; i < more.length; i++) {
            into[i] |= more[i];
        }
    }

    /** Joins words by themselves into a row; whether that brought anything new. */
    boolean join(int row, long[] more) {
        boolean changed = false;
        for (int i = 0; i < width; i++) {
            long joined = words[row * width + i] | more[i];
            changed |= joined != words[row * width + i];
            words[row * width + i] = joined;
        }
        return changed;
    }

    /** Makes words by themselves a row; whether it is another than before. */
    boolean replace(int row, long[] fresh) {
        int start = row * width;
        boolean same = Arrays.equals(fresh, 0, width, words, start, start + width);
        System.arraycopy(fresh, 0, words, start, width);
        return !same;
    }

    BitSet get(int row) {
        return BitSet.valueOf(Arrays.copyOfRange(words, row * width, (row + 1) * width));
    }

    boolean get(int row, int bit) {
        return (words[row * width + bit / Long.SIZE] >>> bit % Long.SIZE & 1) != 0;
    }

    Set<String> items() {
        return places.keySet();
    }

    /** The items whose row is another than there, where every bit means the same. */
    Set<String> changesFrom(FactRows before) {
        Set<String> changed = new HashSet<>();
        for (Map.Entry<String, Integer> row : places.entrySet()) {
            Integer then = before.places.get(row.getKey());
            if (then == null || !isSame(row.getValue(), before, then)) {
                changed.add(row.getKey());
            }
        }
        return changed;
    }

    private boolean isSame(int place, FactRows others, int other) {
        int start = place * width;
        int there = other * width;
        return Arrays.equals(words, start, start + width, others.words, there, there + width);
    }
}
