package etamine.book.internal.exchange;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes JSON to a file so that the file is either the old or the complete new one, never half of it. */
public final class WholeFile {
    private WholeFile() {}

    /** Writes JSON piece by piece. */
    interface Writing {
        /** Writes one whole value. */
        void on(JsonGenerator generator) throws IOException;
    }

    /** Writes the content, replacing what is there at once. */
    public static void write(Path file, JsonNode content) {
        write(file, generator -> Json.MAPPER.writeTree(generator, content));
    }

    /** Writes what need not be held at once, replacing what is there at once. */
    static void write(Path file, Writing content) {
        Path folder = file.toAbsolutePath().getParent();
        try {
            Path next = Files.createTempFile(folder, "." + file.getFileName(), ".part");
            try {
                print(next, content);
                move(next, file);
            } finally {
                Files.deleteIfExists(next);
            }
        } catch (IOException | UncheckedIOException e) {
            throw new BookException(
                    Reason.NO_ROOM,
                    "The file " + file + " could not be written (" + e.getMessage()
                            + "); check that the folder exists, may be written and has room.",
                    e);
        }
    }

    private static void print(Path file, Writing content) throws IOException {
        DefaultPrettyPrinter lines = new DefaultPrettyPrinter();
        lines.indentArraysWith(new DefaultIndenter("  ", "\n"));
        lines.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        try (OutputStream out = Files.newOutputStream(file);
                JsonGenerator generator = Json.MAPPER.createGenerator(out, JsonEncoding.UTF8)) {
            generator.setPrettyPrinter(lines);
            content.on(generator);
            generator.writeRaw('\n');
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
