package etamine.checks.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/** The demo kitchen's file, laid out so that a difference between two versions can be read line by line. */
final class DemoFile {
    static final JsonMapper JSON = new JsonMapper();
    private static final int WIDTH = 200;

    private DemoFile() {}

    /** Where it lies, seen from this bundle or from the top of the repository. */
    static Path path() {
        Path folder = Path.of("").toAbsolutePath();
        while (folder != null && !Files.exists(folder.resolve("demo-data/ninth-lantern.json"))) {
            folder = folder.getParent();
        }
        if (folder == null) {
            throw new IllegalStateException("There is no demo-data/ninth-lantern.json above "
                    + Path.of("").toAbsolutePath());
        }
        return folder.resolve("demo-data/ninth-lantern.json");
    }

    static ObjectNode read() {
        try {
            return (ObjectNode) JSON.readTree(Files.readString(path()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void write(ObjectNode kitchen) {
        try {
            Files.writeString(path(), text(kitchen));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file's text: what fits stands on one line, the rest is indented. */
    static String text(ObjectNode kitchen) {
        StringBuilder text = new StringBuilder();
        put(text, kitchen, "", true);
        return text.append('\n').toString();
    }

    private static void put(StringBuilder text, JsonNode node, String indent, boolean open) {
        String flat = flat(node);
        if (!node.isContainerNode() || !open && indent.length() + flat.length() <= WIDTH) {
            text.append(flat);
            return;
        }
        List<String> lines = new ArrayList<>();
        String deeper = indent + "  ";
        if (node.isObject()) {
            for (Map.Entry<String, JsonNode> member : node.properties()) {
                StringBuilder line = new StringBuilder("\"" + member.getKey() + "\": ");
                put(line, member.getValue(), deeper, open && member.getValue().isArray());
                lines.add(line.toString());
            }
        } else {
            for (JsonNode element : node) {
                StringBuilder line = new StringBuilder();
                put(line, element, deeper, false);
                lines.add(line.toString());
            }
        }
        text.append(node.isObject() ? "{" : "[").append('\n').append(deeper);
        text.append(String.join(",\n" + deeper, lines)).append('\n').append(indent);
        text.append(node.isObject() ? "}" : "]");
    }

    private static String flat(JsonNode node) {
        if (node.isObject()) {
            List<String> members = new ArrayList<>();
            node.properties().forEach(member -> members.add("\"" + member.getKey() + "\": " + flat(member.getValue())));
            return "{" + String.join(", ", members) + "}";
        }
        if (node.isArray()) {
            List<String> elements = new ArrayList<>();
            for (Iterator<JsonNode> each = node.elements(); each.hasNext(); ) {
                elements.add(flat(each.next()));
            }
            return "[" + String.join(", ", elements) + "]";
        }
        return node.toString();
    }
}
