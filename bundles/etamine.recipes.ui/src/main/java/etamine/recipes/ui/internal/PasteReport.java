package etamine.recipes.ui.internal;

/** What became of a pasted list, in a sentence. */
final class PasteReport {
    private PasteReport() {}

    static String of(long lines, long unclear, long headings) {
        String read = lines + (lines == 1 ? " line" : " lines") + " pasted";
        String open = unclear == 0
                ? ", all understood."
                : ", " + (lines - unclear) + " understood; " + unclear + (unclear == 1 ? " is" : " are")
                        + " marked below and can be put right in place.";
        String left = headings == 0 ? "" : " Headings left out: " + headings + ".";
        return read + open + left;
    }
}
