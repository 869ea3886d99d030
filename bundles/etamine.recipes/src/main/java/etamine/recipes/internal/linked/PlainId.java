package etamine.recipes.internal.linked;

import java.text.Normalizer;
import java.util.Locale;

/** Identifiers made of names: letters and digits of any script, small, without accents, joined by hyphens. */
final class PlainId {
    private static final int LONGEST = 60;

    private PlainId() {}

    /** The identifier of a name; {@code otherwise} where the name has neither letter nor digit. */
    static String of(String name, String otherwise) {
        String plain = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        String cut = plain.substring(0, Math.min(LONGEST, plain.length())).replaceAll("-$", "");
        boolean split = !cut.isEmpty() && Character.isHighSurrogate(cut.charAt(cut.length() - 1));
        String whole = split ? cut.substring(0, cut.length() - 1) : cut;
        return whole.isEmpty() ? otherwise : whole;
    }
}
