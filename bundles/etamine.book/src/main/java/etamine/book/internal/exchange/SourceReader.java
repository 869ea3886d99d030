package etamine.book.internal.exchange;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

/** Reads a file strictly: size first, then encoding, then JSON, then that it is the exchange form. */
final class SourceReader {
    /** The form's version, the value of its member {@code etamine}. */
    static final String VERSION = "1";

    private static final int LONGEST_POINTER = 300;

    private SourceReader() {}

    static Source read(Path file, long largest) throws RefusedFile {
        return new Source(file, parse(bytes(file, largest)));
    }

    /** The outermost object of a file's content. */
    static ObjectNode parse(byte[] bytes) throws RefusedFile {
        var fault = StrictText.fault(bytes);
        if (fault.isPresent()) {
            throw new RefusedFile("", fault.get());
        }
        int mark = StrictText.markLength(bytes);
        try (Reader text = new InputStreamReader(
                        new ByteArrayInputStream(bytes, mark, bytes.length - mark), StandardCharsets.UTF_8);
                JsonParser parser = Json.MAPPER.createParser(text)) {
            return form(tree(parser));
        } catch (IOException e) {
            throw new RefusedFile("", "This file cannot be read: " + e.getMessage() + '.');
        }
    }

    private static byte[] bytes(Path file, long largest) throws RefusedFile {
        try {
            if (Files.isDirectory(file)) {
                throw new RefusedFile("", "This is a folder; name the file in it.");
            }
            long size = Files.size(file);
            if (size > largest) {
                throw tooLarge(size, largest);
            }
            try (InputStream in = Files.newInputStream(file)) {
                byte[] bytes = in.readNBytes((int) Math.min(largest + 1, Integer.MAX_VALUE - 8));
                if (bytes.length > largest) {
                    throw tooLarge(bytes.length, largest);
                }
                return bytes;
            }
        } catch (NoSuchFileException e) {
            throw new RefusedFile("", "There is no such file; check its name and folder.");
        } catch (AccessDeniedException e) {
            throw new RefusedFile("", "You may not read this file; ask its owner for the right.");
        } catch (IOException e) {
            throw new RefusedFile("", "This file cannot be read: " + e.getMessage() + '.');
        }
    }

    private static RefusedFile tooLarge(long size, long largest) {
        return new RefusedFile(
                "",
                String.format(
                        Locale.ROOT,
                        "This file has %d MB and the largest that is read has %d MB; split it into several files, or"
                                + " allow more with --largest.",
                        Math.max(1, size >> 20),
                        Math.max(1, largest >> 20)));
    }

    private static JsonNode tree(JsonParser parser) throws IOException, RefusedFile {
        try {
            JsonNode tree = Json.MAPPER.readTree(parser);
            if (tree == null || tree.isMissingNode()) {
                throw new RefusedFile("", "This file is empty; it needs at least {\"etamine\": \"1\"}.");
            }
            return tree;
        } catch (JsonProcessingException e) {
            String pointer = parser.getParsingContext().pathAsPointer().toString();
            throw new RefusedFile(pointer.length() > LONGEST_POINTER ? "" : pointer, at(e.getLocation()) + sentence(e));
        }
    }

    private static String at(JsonLocation location) {
        return location == null ? "" : "Line " + location.getLineNr() + ", column " + location.getColumnNr() + ": ";
    }

    private static String sentence(JsonProcessingException e) {
        String said = e.getOriginalMessage().lines().findFirst().orElse("").replaceAll(" \\(start marker at.*", "");
        if (e instanceof StreamConstraintsException) {
            return "something is too deep or too long to be a kitchen's data (at most " + Json.DEEPEST
                    + " levels, texts of a million characters, numbers of a hundred digits); take it out.";
        }
        if (e instanceof JsonEOFException) {
            return "the file ends too early; close what was opened with a quote, { or [.";
        }
        if (said.startsWith("Trailing token")) {
            return "something follows the end; remove what comes after it.";
        }
        if (said.startsWith("Duplicate field")) {
            return "the member " + said.replaceAll("^Duplicate field '(.*)'$", "\"$1\"")
                    + " stands twice in one object; keep one of them.";
        }
        return "this is not JSON; look for a missing or surplus comma, quote or bracket (" + said + ").";
    }

    private static ObjectNode form(JsonNode tree) throws RefusedFile {
        if (!(tree instanceof ObjectNode top)) {
            throw new RefusedFile("", "The exchange form is one object; put { at the start and } at the end.");
        }
        JsonNode version = top.path("etamine");
        if (version.isMissingNode()) {
            throw new RefusedFile("", "Add \"etamine\": \"1\" as the first member, so that the form is known.");
        }
        if (!version.isTextual() || !version.asText().equals(VERSION)) {
            throw new RefusedFile(
                    "/etamine",
                    "This program reads form \"1\", not " + version + "; save the file in that form or use a newer"
                            + " program.");
        }
        return top;
    }
}
