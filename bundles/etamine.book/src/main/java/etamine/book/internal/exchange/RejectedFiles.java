package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Files what was rejected beside the input: first what is wrong with each entry, then the entries themselves in the
 * exchange form, so that they can be mended there and loaded again.
 */
final class RejectedFiles {
    /** The member that lists the reasons; a load passes over it. */
    static final String MEMBER = "rejected";

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private RejectedFiles() {}

    static List<Path> write(List<Fault> faults) {
        Map<Path, List<Fault>> byFile = new LinkedHashMap<>();
        faults.forEach(fault ->
                byFile.computeIfAbsent(fault.file(), any -> new ArrayList<>()).add(fault));
        List<Path> written = new ArrayList<>();
        byFile.forEach((file, its) -> {
            Path target = beside(file);
            WholeFile.write(target, content(its));
            written.add(target);
        });
        return written;
    }

    static Path beside(Path file) {
        String name = String.valueOf(file.getFileName());
        return file.resolveSibling(name.replaceFirst("(?i)\\.json$", "") + ".rejected.json");
    }

    private static ObjectNode content(List<Fault> faults) {
        ObjectNode whole = JSON.objectNode().put("etamine", SourceReader.VERSION);
        ArrayNode reasons = whole.putArray(MEMBER);
        Set<JsonNode> placed = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Fault fault : faults) {
            JsonNode entry = fault.part().entry(fault.pointer());
            reasons.addObject()
                    .put("pointer", fault.inFile())
                    .put("problem", fault.problem())
                    .set("entry", entry);
            if (placed.add(entry)) {
                place(whole, fault, entry);
            }
        }
        return whole;
    }

    private static void place(ObjectNode whole, Fault fault, JsonNode entry) {
        if (Pointers.index(fault.pointer()) >= 0 && fault.part().isList()) {
            whole.withArrayProperty(fault.part().name()).add(entry);
        } else {
            whole.set(fault.part().name(), entry);
        }
    }
}
