package etamine.testing;

import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.Document;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The backup of a volatile book: everything it holds, one value after the other. */
final class VolatileFile {
    private static final byte[] MARK = "etamine volatile book 1".getBytes(StandardCharsets.US_ASCII);

    private VolatileFile() {}

    static Path write(VolatileContent content, Path target) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.write(MARK);
            out.writeLong(content.revision());
            writeModules(content, out);
            writeShelves(content, out);
            writeLedgers(content, out);
            return Files.write(target, bytes.toByteArray(), StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException exists) {
            throw new BookException(Reason.EXISTS, target + " is already there; choose another name.", exists);
        } catch (IOException problem) {
            throw new BookException(Reason.NO_ROOM, target + " could not be written: " + problem.getMessage(), problem);
        }
    }

    static VolatileContent read(Path backup) {
        VolatileContent content = new VolatileContent();
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(Files.readAllBytes(backup)))) {
            if (!Arrays.equals(in.readNBytes(MARK.length), MARK)) {
                throw new BookException(Reason.FOREIGN, backup + " is not a book of this program.");
            }
            content.revision(in.readLong());
            readModules(content, in);
            readShelves(content, in);
            readLedgers(content, in);
            return content;
        } catch (NoSuchFileException missing) {
            throw new BookException(Reason.MISSING, "There is no file " + backup + ".", missing);
        } catch (IOException problem) {
            throw new BookException(Reason.DAMAGED, backup + " is damaged: " + problem.getMessage(), problem);
        }
    }

    private static void writeModules(VolatileContent content, DataOutputStream out) throws IOException {
        out.writeInt(content.modules().size());
        for (Map.Entry<String, Integer> module : content.modules().entrySet()) {
            text(out, module.getKey());
            out.writeInt(module.getValue());
        }
    }

    private static void readModules(VolatileContent content, DataInputStream in) throws IOException {
        for (int left = in.readInt(); left > 0; left--) {
            content.record(text(in), in.readInt());
        }
    }

    private static void writeShelves(VolatileContent content, DataOutputStream out) throws IOException {
        for (Map.Entry<String, Map<String, List<Document>>> shelf :
                content.shelves().entrySet()) {
            for (List<Document> revisions : shelf.getValue().values()) {
                for (Document document : revisions) {
                    out.writeBoolean(true);
                    text(out, shelf.getKey());
                    text(out, document.id());
                    out.writeLong(document.revision());
                    text(out, document.at().toString());
                    text(out, document.label());
                    text(out, document.json());
                }
            }
        }
        out.writeBoolean(false);
    }

    private static void readShelves(VolatileContent content, DataInputStream in) throws IOException {
        while (in.readBoolean()) {
            String shelf = text(in);
            content.add(shelf, new Document(text(in), in.readLong(), Instant.parse(text(in)), text(in), text(in)));
        }
    }

    private static void writeLedgers(VolatileContent content, DataOutputStream out) throws IOException {
        out.writeInt(content.forms().size());
        for (LedgerForm form : content.forms().values()) {
            text(out, form.name());
            texts(out, form.keys());
            texts(out, form.measures());
            Map<String, LedgerEntry> entries = content.ledgers().getOrDefault(form.name(), Map.of());
            out.writeInt(entries.size());
            for (LedgerEntry entry : entries.values()) {
                writeEntry(entry, out);
            }
        }
    }

    private static void readLedgers(VolatileContent content, DataInputStream in) throws IOException {
        for (int forms = in.readInt(); forms > 0; forms--) {
            LedgerForm form = new LedgerForm(text(in), texts(in), texts(in));
            content.shape(form);
            for (int entries = in.readInt(); entries > 0; entries--) {
                content.add(form.name(), readEntry(in));
            }
        }
    }

    private static void writeEntry(LedgerEntry entry, DataOutputStream out) throws IOException {
        text(out, entry.id());
        text(out, entry.at().toString());
        text(out, entry.detail());
        texts(out, entry.reverses().stream().toList());
        out.writeInt(entry.keys().size());
        for (Map.Entry<String, String> key : entry.keys().entrySet()) {
            text(out, key.getKey());
            text(out, key.getValue());
        }
        out.writeInt(entry.measures().size());
        for (Map.Entry<String, Long> measure : entry.measures().entrySet()) {
            text(out, measure.getKey());
            out.writeLong(measure.getValue());
        }
    }

    private static LedgerEntry readEntry(DataInputStream in) throws IOException {
        String id = text(in);
        Instant at = Instant.parse(text(in));
        String detail = text(in);
        Optional<String> reverses = texts(in).stream().findFirst();
        Map<String, String> keys = new HashMap<>();
        for (int left = in.readInt(); left > 0; left--) {
            keys.put(text(in), text(in));
        }
        Map<String, Long> measures = new HashMap<>();
        for (int left = in.readInt(); left > 0; left--) {
            measures.put(text(in), in.readLong());
        }
        return new LedgerEntry(id, at, keys, measures, detail, reverses);
    }

    private static void texts(DataOutputStream out, List<String> texts) throws IOException {
        out.writeInt(texts.size());
        for (String text : texts) {
            text(out, text);
        }
    }

    private static List<String> texts(DataInputStream in) throws IOException {
        List<String> texts = new ArrayList<>();
        for (int left = in.readInt(); left > 0; left--) {
            texts.add(text(in));
        }
        return texts;
    }

    private static void text(DataOutputStream out, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static String text(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > in.available()) {
            throw new IOException("it ends too early");
        }
        return new String(in.readNBytes(length), StandardCharsets.UTF_8);
    }
}
