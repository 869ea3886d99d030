package etamine.documents.internal;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The fonts of one document: the sans serif that comes with PDFBox, and for characters it lacks the first installed
 * TrueType font that has them. A character no font has is shown as a box.
 */
final class PdfText {
    private static final String SANS = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final int BOX = 0x25A1;
    private static final String ELLIPSIS = "…";

    private final PDDocument document;
    private final InstalledFonts installed;
    private final PDFont sans;
    private final Map<InstalledFonts.Face, Optional<PDFont>> loaded = new HashMap<>();
    private final Map<Integer, Glyph> glyphs = new HashMap<>();
    private boolean lacking;

    /** A stretch of text in one font. */
    record Run(PDFont font, String text) {}

    /** How a character is shown: in that font, as that character, that wide for a size of 1000. */
    private record Glyph(PDFont font, String shown, float width) {}

    PdfText(PDDocument document, InstalledFonts installed) throws IOException {
        this.document = document;
        this.installed = installed;
        try (InputStream in = PDDocument.class.getResourceAsStream(SANS)) {
            this.sans = PDType0Font.load(document, in, true);
        }
    }

    /** Whether some character so far had to be shown as a box. */
    boolean lacksCharacters() {
        return lacking;
    }

    /** The text, from left to right as the eye meets it, cut into stretches that one font can show. */
    List<Run> runs(String line) throws IOException {
        List<Run> runs = new ArrayList<>();
        StringBuilder stretch = new StringBuilder();
        PDFont font = sans;
        for (int c : LineOrder.visual(line).codePoints().toArray()) {
            Glyph glyph = glyph(c);
            if (glyph.font() != font && !stretch.isEmpty()) {
                runs.add(new Run(font, stretch.toString()));
                stretch.setLength(0);
            }
            font = glyph.font();
            stretch.append(glyph.shown());
        }
        runs.add(new Run(font, stretch.toString()));
        return runs;
    }

    /** The width of the text at that size, in points. */
    float width(String text, float size) throws IOException {
        float width = 0;
        for (int c : text.codePoints().toArray()) {
            width += glyph(c).width();
        }
        return width / 1000 * size;
    }

    /** The text, or as much of it as fits with an ellipsis after it. */
    String shortened(String text, float size, float width) throws IOException {
        if (width(text, size) <= width) {
            return text;
        }
        StringBuilder kept = new StringBuilder();
        float used = width(ELLIPSIS, size);
        for (int c : text.codePoints().toArray()) {
            used += glyph(c).width() / 1000 * size;
            if (used > width) {
                break;
            }
            kept.appendCodePoint(c);
        }
        return kept.toString().stripTrailing() + ELLIPSIS;
    }

    /** The lines of the text wrapped to a width; words longer than a line are broken. */
    List<String> wrap(String text, float size, float width) throws IOException {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            wrapParagraph(paragraph, size, width, lines);
        }
        return lines;
    }

    private void wrapParagraph(String paragraph, float size, float width, List<String> lines) throws IOException {
        StringBuilder line = new StringBuilder();
        float used = 0;
        float space = width(" ", size);
        for (String word : paragraph.split(" ")) {
            float more = width(word, size);
            if (line.isEmpty() ? more <= width : used + space + more <= width) {
                used += line.isEmpty() ? more : space + more;
                line.append(line.isEmpty() ? "" : " ").append(word);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(breakWord(word, size, width, lines));
            used = width(line.toString(), size);
        }
        lines.add(line.toString());
    }

    /** Adds the full lines of a word that is longer than a line and gives what is left of it. */
    private String breakWord(String word, float size, float width, List<String> lines) throws IOException {
        StringBuilder line = new StringBuilder();
        float used = 0;
        for (int c : word.codePoints().toArray()) {
            float more = glyph(c).width() / 1000 * size;
            if (used + more > width && !line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
                used = 0;
            }
            line.appendCodePoint(c);
            used += more;
        }
        return line.toString();
    }

    private Glyph glyph(int c) throws IOException {
        Glyph known = glyphs.get(c);
        if (known == null) {
            known = find(Character.isISOControl(c) || Character.isSpaceChar(c) ? ' ' : c);
            glyphs.put(c, known);
        }
        return known;
    }

    private Glyph find(int c) throws IOException {
        if (Character.getType(c) == Character.FORMAT || c == 0xFE0E || c == 0xFE0F) {
            return new Glyph(sans, "", 0); // says how its neighbours are shown and has no shape itself
        }
        if (shows(sans, c)) {
            return glyph(sans, c);
        }
        for (InstalledFonts.Face face : installed.having(c)) {
            Optional<PDFont> font = loaded.computeIfAbsent(face, wanted -> wanted.load(document));
            if (font.isPresent() && shows(font.get(), c)) {
                return glyph(font.get(), c);
            }
        }
        lacking = true;
        return glyph(sans, shows(sans, BOX) ? BOX : '?');
    }

    private static Glyph glyph(PDFont font, int c) throws IOException {
        String shown = Character.toString(c);
        return new Glyph(font, shown, font.getStringWidth(shown));
    }

    private static boolean shows(PDFont font, int c) {
        try {
            font.encode(Character.toString(c));
            return true;
        } catch (IOException | IllegalArgumentException | IllegalStateException e) {
            return false;
        }
    }
}
