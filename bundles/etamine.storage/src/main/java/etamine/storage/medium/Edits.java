package etamine.storage.medium;

import etamine.storage.Commit.DocumentChange;
import etamine.storage.Document;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The documents a transaction has changed so far; what it changed back is not among them. */
final class Edits {
    private final Map<String, Map<String, Edit>> shelves = new LinkedHashMap<>();

    /**
     * One document's change.
     *
     * @param base its latest revision before the transaction, which may be a tombstone
     * @param now the revision the transaction makes
     */
    record Edit(Optional<Document> base, Document now) {
        boolean changes() {
            return !now.json().equals(base.map(Document::json).orElse(""));
        }
    }

    Edits copy() {
        Edits copy = new Edits();
        shelves.forEach((shelf, edits) -> copy.shelves.put(shelf, new LinkedHashMap<>(edits)));
        return copy;
    }

    Optional<Edit> get(String shelf, String id) {
        return Optional.ofNullable(shelves.getOrDefault(shelf, Map.of()).get(id));
    }

    void put(String shelf, String id, Edit edit) {
        Map<String, Edit> edits = shelves.computeIfAbsent(shelf, name -> new LinkedHashMap<>());
        if (edit.changes()) {
            edits.put(id, edit);
        } else {
            edits.remove(id);
        }
    }

    /** Whether documents of that shelf are among them. */
    boolean touches(String shelf) {
        return !shelves.getOrDefault(shelf, Map.of()).isEmpty();
    }

    /** The given documents with the edits of that shelf laid over them, by id. */
    List<Document> over(String shelf, List<Document> present) {
        Map<String, Edit> edits = shelves.getOrDefault(shelf, Map.of());
        if (edits.isEmpty()) {
            return present;
        }
        Map<String, Document> merged = new TreeMap<>();
        present.forEach(document -> merged.put(document.id(), document));
        edits.forEach((id, edit) -> merged.put(id, edit.now));
        merged.values().removeIf(Document::removed);
        return List.copyOf(merged.values());
    }

    List<DocumentChange> changes() {
        List<DocumentChange> changes = new ArrayList<>();
        shelves.forEach(
                (shelf, edits) -> edits.values().forEach(edit -> changes.add(new DocumentChange(shelf, edit.now))));
        return changes;
    }
}
