package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Several files as one: their sections joined, each element knowing the file it came from. */
final class Manuscript {
    /** Members that are no sections: the form's version, where a schema is, the demo's day, what an earlier
     * load filed. */
    private static final Set<String> NO_SECTION = Set.of("etamine", "$schema", "demo", RejectedFiles.MEMBER);

    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    Manuscript(List<Source> sources) {
        for (Source source : sources) {
            for (Map.Entry<String, JsonNode> member : source.top().properties()) {
                if (!NO_SECTION.contains(member.getKey())) {
                    add(source, member.getKey(), member.getValue());
                }
            }
        }
    }

    private void add(Source source, String name, JsonNode value) {
        Part present = parts.get(name);
        if (present == null) {
            parts.put(name, new Part(name, source.file(), value));
        } else if (!present.append(source.file(), value)) {
            faults.add(new Fault(
                    present,
                    "",
                    source.file(),
                    Pointers.member("", name),
                    "The section " + name + " stands in two of the files; leave it in one."));
        }
    }

    /** The sections in the order they were met. */
    Collection<Part> parts() {
        return parts.values();
    }

    /** Sections that could not be joined. */
    List<Fault> faults() {
        return faults;
    }
}
