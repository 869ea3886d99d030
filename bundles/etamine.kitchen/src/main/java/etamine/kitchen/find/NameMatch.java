package etamine.kitchen.find;

import etamine.base.Exemption;
import java.text.Normalizer;
import java.util.Locale;
import java.util.OptionalInt;

/** How well a name fits what somebody typed, without regard to case and accents. */
@Exemption(rule = "exported-types", because = "the same typed words must find the same things in every module")
public final class NameMatch {
    private static final int FIRST_ACCENTED = 128;

    private final String typed;

    /** A match against this text. */
    public NameMatch(String typed) {
        this.typed = plain(typed.strip());
    }

    /**
     * The rank of a name: 0 when it is the text, 1 when it starts with it, 2 when one of its words does, 3 when it
     * contains it; empty when it doesn't. Everything fits an empty text.
     */
    public OptionalInt rank(String name) {
        String candidate = plain(name);
        int at = candidate.indexOf(typed);
        if (at < 0) {
            return OptionalInt.empty();
        }
        if (at == 0) {
            return OptionalInt.of(candidate.length() == typed.length() ? 0 : 1);
        }
        return OptionalInt.of(candidate.contains(" " + typed) ? 2 : 3);
    }

    /** Whether a name fits at all. */
    public boolean fits(String name) {
        return rank(name).isPresent();
    }

    private static String plain(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return isPlain(lower)
                ? lower
                : Normalizer.normalize(lower, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
    }

    /** Without a stream: thousands of names are looked through between two keystrokes. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= FIRST_ACCENTED) {
                return false;
            }
        }
        return true;
    }
}
