package etamine.recipes.internal.linked;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The JSON of a file, or of the script blocks of a web page. Nothing in it is run or fetched; what is too large, too deep
 * or no text is refused with a sentence.
 */
final class LdSource {
    static final int LARGEST = 64 * 1024 * 1024;
    static final int DEEPEST = 60;
    private static final int LONGEST_TEXT = 1_000_000;
    private static final String SCRIPT = "<script";

    private static final JsonMapper JSON = new JsonMapper(JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxStringLength(LONGEST_TEXT)
                    .maxNumberLength(100)
                    .maxNameLength(1_000)
                    .build())
            .build());

    private final List<JsonNode> roots = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();

    private LdSource() {}

    static LdSource read(Path file) {
        LdSource source = new LdSource();
        try {
            source.take(text(file));
        } catch (NoSuchFileException e) {
            source.problems.add("There is no such file; check its name and folder.");
        } catch (CharacterCodingException e) {
            source.problems.add("This file is not UTF-8 text; save it as UTF-8.");
        } catch (IOException e) {
            source.problems.add("This file cannot be read: " + e.getMessage() + ".");
        }
        return source;
    }

    /** The outermost values, in the order of the file. */
    List<JsonNode> roots() {
        return roots;
    }

    /** What could not be read, as sentences. */
    List<String> problems() {
        return problems;
    }

    private static String text(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new IOException("it is a folder; name the file in it");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw new IOException("it has more than 64 MB; split it into several files");
            }
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        }
    }

    private void take(String text) {
        String start = text.stripLeading();
        if (start.startsWith("<")) {
            scripts(start);
        } else {
            parse(text, "");
        }
    }

    private void scripts(String page) {
        String low = page.toLowerCase(Locale.ROOT);
        int blocks = 0;
        for (int at = low.indexOf(SCRIPT); at >= 0; at = low.indexOf(SCRIPT, at + 1)) {
            int opened = low.indexOf('>', at);
            int closed = opened < 0 ? -1 : low.indexOf("</script", opened);
            if (closed < 0) {
                break;
            }
            if (low.substring(at, opened).contains("application/ld+json")) {
                blocks++;
                parse(page.substring(opened + 1, closed), "Block " + blocks + " of the page: ");
            }
            at = closed;
        }
        if (blocks == 0) {
            problems.add("This page has no recipe data that programs can read; type the recipe, or paste its lines.");
        }
    }

    private void parse(String json, String where) {
        try {
            JsonNode root = JSON.readTree(json);
            if (root.isContainerNode()) {
                roots.add(root);
            } else {
                problems.add(where + "There is nothing in it; choose a file with recipes.");
            }
        } catch (StreamConstraintsException e) {
            problems.add(where + "Something is too deep or too long to be a recipe (at most " + DEEPEST
                    + " levels and texts of a million characters); take it out.");
        } catch (JsonProcessingException e) {
            problems.add(where + "Line " + e.getLocation().getLineNr() + ", column "
                    + e.getLocation().getColumnNr() + ": this is not JSON; look for a missing or surplus comma, quote "
                    + "or bracket.");
        }
    }
}
