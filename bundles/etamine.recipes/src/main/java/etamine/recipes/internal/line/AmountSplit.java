package etamine.recipes.internal.line;

import java.util.List;
import java.util.Locale;

/**
 * The places where the amount in front of a line could end.
 *
 * @param body the line without its basis
 * @param starts where its words begin
 */
record AmountSplit(Cut body, List<Integer> starts) {
    /** Words an amount has at most: 1 1/2 imperial fl oz is five. */
    private static final int LONGEST = 6;

    static AmountSplit of(Cut body) {
        return new AmountSplit(body, body.wordStarts());
    }

    /** The most words that can be an amount with a word left for the name. */
    int most() {
        return Math.min(starts.size() - 1, LONGEST);
    }

    Cut amount(int words) {
        return words == 0 ? body.before(0) : body.before(starts.get(words));
    }

    /** What follows so many words, without an {@code of}. */
    Cut rest(int words) {
        Cut rest = body.after(starts.get(words));
        return rest.text().toLowerCase(Locale.ROOT).startsWith("of ") ? rest.after(3) : rest;
    }

    /** How many words in front are surely an amount. */
    int sure() {
        int words = most();
        while (words > 0 && !isAmount(amount(words))) {
            words--;
        }
        return words;
    }

    /** The first word from which the end of the line could be an amount. */
    int firstBehind() {
        return Math.max(1, starts.size() - LONGEST);
    }

    Cut behind(int words) {
        return body.after(starts.get(words));
    }

    /** What stands before an amount at the end, without the dash between them. */
    Cut beforeBehind(int words) {
        Cut name = body.before(starts.get(words));
        boolean dash = name.text().matches(".*\\s[-\u2010-\u2015=]");
        return dash ? name.before(name.text().length() - 1) : name;
    }

    private static boolean isAmount(Cut amount) {
        return TypedAmount.mayBegin(amount.text()) && TypedAmount.isKnown(amount.text());
    }
}
