package etamine.inventory.internal;

import etamine.storage.LedgerEntry;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which entries of a ledger stand after reversals, and reversals of reversals. */
final class Standing {
    private Standing() {}

    /** The entries that stand: reversed ones and their reversals cancel each other. */
    static List<LedgerEntry> of(List<LedgerEntry> entries) {
        Map<String, LedgerEntry> standing = new LinkedHashMap<>();
        Map<String, LedgerEntry> cancelled = new HashMap<>();
        Map<String, String> cancelling = new HashMap<>();
        for (LedgerEntry entry : inWritingOrder(entries)) {
            Optional<String> target = entry.reverses();
            if (target.isPresent() && standing.containsKey(target.get())) {
                cancelled.put(target.get(), standing.remove(target.get()));
                cancelling.put(entry.id(), target.get());
            } else if (target.isPresent() && cancelling.containsKey(target.get())) {
                String revived = cancelling.remove(target.get());
                standing.put(revived, cancelled.remove(revived));
            } else {
                standing.put(entry.id(), entry);
            }
        }
        return standing.values().stream()
                .sorted(Comparator.comparing(LedgerEntry::at))
                .toList();
    }

    /** An entry after the one it reverses, whatever their times say. */
    private static List<LedgerEntry> inWritingOrder(List<LedgerEntry> entries) {
        Map<String, LedgerEntry> waiting = new LinkedHashMap<>();
        entries.forEach(entry -> waiting.put(entry.id(), entry));
        Set<String> done = new LinkedHashSet<>();
        for (LedgerEntry entry : entries) {
            ArrayDeque<LedgerEntry> chain = new ArrayDeque<>();
            LedgerEntry at = entry;
            while (at != null && !done.contains(at.id()) && !chain.contains(at)) {
                chain.push(at);
                at = at.reverses().map(waiting::get).orElse(null);
            }
            chain.forEach(link -> done.add(link.id()));
        }
        return done.stream().map(waiting::get).toList();
    }
}
