package etamine.documents.internal;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.fontbox.util.autodetect.FontFileFinder;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The fonts of one document: the sans serif that comes with PDFBox, and for characters it lacks the first installed
 * TrueType font that has them. A character no font has is shown as a question mark.
 */
final class PdfText {
    private static final String SANS = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final int CANDIDATES = 400;

    private final PDDocument document;
    private final PDFont sans;
    private final List<PDFont> others = new ArrayList<>();
    private final Map<Integer, PDFont> chosen = new HashMap<>();

    /** A stretch of text in one font. */
    record Run(PDFont font, String text) {}

    PdfText(PDDocument document) throws IOException {
        this.document = document;
        try (InputStream in = PDDocument.class.getResourceAsStream(SANS)) {
            this.sans = PDType0Font.load(document, in, true);
        }
    }

    /** The text cut into stretches that one font can show. */
    List<Run> runs(String text) throws IOException {
        List<Run> runs = new ArrayList<>();
        StringBuilder stretch = new StringBuilder();
        PDFont font = sans;
        for (int c : text.codePoints().toArray()) {
            int shown = Character.isISOControl(c) ? ' ' : c;
            PDFont next = fontFor(shown);
            if (next != font && !stretch.isEmpty()) {
                runs.add(new Run(font, stretch.toString()));
                stretch.setLength(0);
            }
            font = next;
            stretch.appendCodePoint(shows(next, shown) ? shown : '?');
        }
        runs.add(new Run(font, stretch.toString()));
        return runs;
    }

    /** The width of the text at that size, in points. */
    float width(String text, float size) throws IOException {
        float width = 0;
        for (Run run : runs(text)) {
            width += run.font().getStringWidth(run.text()) / 1000 * size;
        }
        return width;
    }

    /** The lines of the text wrapped to a width; words longer than a line are broken. */
    List<String> wrap(String text, float size, float width) throws IOException {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            String line = "";
            for (String word : paragraph.split(" ")) {
                String longer = line.isEmpty() ? word : line + " " + word;
                if (width(longer, size) <= width) {
                    line = longer;
                    continue;
                }
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = breakWord(word, size, width, lines);
            }
            lines.add(line);
        }
        return lines;
    }

    /** Adds the full lines of a word that is longer than a line and gives what is left of it. */
    private String breakWord(String word, float size, float width, List<String> lines) throws IOException {
        StringBuilder line = new StringBuilder();
        float used = 0;
        for (int c : word.codePoints().toArray()) {
            float more = width(Character.toString(c), size);
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

    private PDFont fontFor(int c) throws IOException {
        if (c < 0x180) {
            return sans;
        }
        PDFont known = chosen.get(c);
        if (known == null) {
            known = shows(sans, c) ? sans : installed(c);
            chosen.put(c, known);
        }
        return known;
    }

    private PDFont installed(int c) throws IOException {
        for (PDFont font : others) {
            if (shows(font, c)) {
                return font;
            }
        }
        List<URI> files = new FontFileFinder().find();
        for (URI uri : files.subList(0, Math.min(files.size(), CANDIDATES))) {
            File file = new File(uri);
            if (file.getName().toLowerCase(Locale.ROOT).endsWith(".ttf") && has(file, c)) {
                PDFont font = PDType0Font.load(document, file);
                others.add(font);
                return font;
            }
        }
        return sans;
    }

    private static boolean has(File file, int c) {
        try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBufferedFile(file))) {
            return font.getUnicodeCmapLookup().getGlyphId(c) != 0;
        } catch (IOException | RuntimeException e) {
            return false; // an unreadable font cannot show it
        }
    }

    private static boolean shows(PDFont font, int c) {
        try {
            font.encode(Character.toString(c));
            return true;
        } catch (IOException | IllegalArgumentException e) {
            return false;
        }
    }
}
