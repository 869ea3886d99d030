package etamine.documents.internal;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeCollection;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.fontbox.util.autodetect.FontFileFinder;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The TrueType fonts of this computer and the characters each has. A font is looked into once, when a character is
 * wanted that none of those before it has. Thread-safe.
 */
final class InstalledFonts {
    private static final int CANDIDATES = 400;
    private static final int HIGHEST = 0x1FFFF;

    private final List<File> files = new ArrayList<>();
    private final List<Face> faces = new ArrayList<>();
    private final BitSet nowhere = new BitSet();
    private boolean listed;

    /** One font of a file, with the characters it has. */
    record Face(File file, Optional<String> nameInCollection, BitSet characters) {

        /** The font within a document; empty when its owner forbids that or it is damaged. */
        Optional<PDFont> load(PDDocument document) {
            try {
                if (nameInCollection.isEmpty()) {
                    return Optional.of(PDType0Font.load(document, file));
                }
                // The document reads the font when it is saved, so the collection stays open until it is closed.
                TrueTypeCollection collection = new TrueTypeCollection(file);
                return Optional.of(PDType0Font.load(document, collection.getFontByName(nameInCollection.get()), true));
            } catch (IOException | RuntimeException unusable) {
                return Optional.empty();
            }
        }
    }

    /** The fonts that have the character: all that were looked into, and the next that has it. */
    synchronized List<Face> having(int c) {
        if (nowhere.get(c)) {
            return List.of();
        }
        list();
        List<Face> having = new ArrayList<>(
                faces.stream().filter(face -> face.characters().get(c)).toList());
        while (having.isEmpty() && !files.isEmpty()) {
            List<Face> next = look(files.remove(0));
            faces.addAll(next);
            next.stream().filter(face -> face.characters().get(c)).forEach(having::add);
        }
        if (having.isEmpty()) {
            nowhere.set(c);
        }
        return having;
    }

    private void list() {
        if (!listed) {
            listed = true;
            new FontFileFinder()
                    .find().stream()
                            .map(File::new)
                            .filter(file -> !ending(file).isEmpty())
                            .sorted()
                            .limit(CANDIDATES)
                            .forEach(files::add);
        }
    }

    private static String ending(File file) {
        String name = file.getName().toLowerCase(Locale.ROOT);
        return name.endsWith(".ttf") ? "ttf" : name.endsWith(".ttc") ? "ttc" : "";
    }

    private static List<Face> look(File file) {
        List<Face> found = new ArrayList<>();
        try {
            if (ending(file).equals("ttc")) {
                try (TrueTypeCollection collection = new TrueTypeCollection(file)) {
                    collection.processAllFonts(font -> add(found, file, Optional.of(font.getName()), font));
                }
            } else {
                try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBufferedFile(file))) {
                    add(found, file, Optional.empty(), font);
                }
            }
        } catch (IOException | RuntimeException unreadable) {
            found.clear(); // an unreadable font cannot show anything
        }
        return found;
    }

    /** Fonts without TrueType outlines, such as those made of pictures, cannot be part of a document. */
    private static void add(List<Face> found, File file, Optional<String> name, TrueTypeFont font) throws IOException {
        if (!font.getTableMap().containsKey("glyf")) {
            return;
        }
        CmapLookup characters = font.getUnicodeCmapLookup();
        BitSet has = new BitSet();
        for (int c = 0; c <= HIGHEST; c++) {
            if (characters.getGlyphId(c) != 0) {
                has.set(c);
            }
        }
        found.add(new Face(file, name, has));
    }
}
