package etamine.documents.internal;

import java.text.Bidi;

/** The order in which a line's characters stand on paper: Hebrew and Arabic run from right to left. */
final class LineOrder {
    private static final String OPENING = "([{<«";
    private static final String CLOSING = ")]}>»";

    private LineOrder() {}

    /** The line as the eye meets it from left to right. */
    static String visual(String line) {
        char[] characters = line.toCharArray();
        if (!Bidi.requiresBidi(characters, 0, characters.length)) {
            return line;
        }
        Bidi bidi = new Bidi(line, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int count = bidi.getRunCount();
        byte[] levels = new byte[count];
        Integer[] runs = new Integer[count];
        for (int i = 0; i < count; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            runs[i] = i;
        }
        Bidi.reorderVisually(levels, 0, runs, 0, count);
        StringBuilder visual = new StringBuilder();
        for (int run : runs) {
            String part = line.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
            visual.append(bidi.getRunLevel(run) % 2 == 0 ? part : mirrored(part));
        }
        return visual.toString();
    }

    private static String mirrored(String part) {
        StringBuilder turned = new StringBuilder();
        new StringBuilder(part).reverse().codePoints().forEach(c -> {
            int opening = OPENING.indexOf(c);
            int closing = CLOSING.indexOf(c);
            turned.appendCodePoint(opening >= 0 ? CLOSING.charAt(opening) : closing >= 0 ? OPENING.charAt(closing) : c);
        });
        return turned.toString();
    }
}
