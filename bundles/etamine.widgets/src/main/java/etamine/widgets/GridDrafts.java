package etamine.widgets;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was typed into rows and could not be saved, kept while other rows or another thing are shown. */
final class GridDrafts {
    private final Map<String, Map<Integer, List<String>>> drafts = new HashMap<>();

    /** Keeps the cells of a row; none to let go of it. */
    void keep(String subject, int row, List<String> cells) {
        Map<Integer, List<String>> kept = drafts.computeIfAbsent(subject, key -> new HashMap<>());
        if (cells.isEmpty()) {
            kept.remove(row);
        } else {
            kept.put(row, cells);
        }
        if (kept.isEmpty()) {
            drafts.remove(subject);
        }
    }

    Optional<List<String>> of(String subject, int row) {
        return Optional.ofNullable(drafts.getOrDefault(subject, Map.of()).get(row));
    }
}
