package etamine.recipes.internal.line;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of a line that keeps its place in it.
 *
 * @param line the whole line, with single blanks
 * @param from the place of its first character
 * @param to the place after its last
 */
public record Cut(String line, int from, int to) {

    static Cut whole(String line) {
        return new Cut(line, 0, line.length());
    }

    /** Parts of one line are the same when their places are. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Cut cut && from == cut.from && to == cut.to && line.equals(cut.line);
    }

    @Override
    public int hashCode() {
        return from * 31 + to;
    }

    String text() {
        return line.substring(from, to);
    }

    boolean isEmpty() {
        return from >= to;
    }

    /** The part between two places counted from its own start, without blanks and marks at its ends. */
    Cut part(int start, int end) {
        int first = from + start;
        int last = from + end;
        while (first < last && " ,;:".indexOf(line.charAt(first)) >= 0) {
            first++;
        }
        while (last > first && " ,;:".indexOf(line.charAt(last - 1)) >= 0) {
            last--;
        }
        return new Cut(line, first, last);
    }

    Cut before(int end) {
        return part(0, end);
    }

    Cut after(int start) {
        return part(start, to - from);
    }

    /** The places, counted from its own start, at which its words begin. */
    List<Integer> wordStarts() {
        List<Integer> starts = new ArrayList<>();
        for (int at = from; at < to; at++) {
            if (line.charAt(at) != ' ' && (at == from || line.charAt(at - 1) == ' ')) {
                starts.add(at - from);
            }
        }
        return starts;
    }
}
