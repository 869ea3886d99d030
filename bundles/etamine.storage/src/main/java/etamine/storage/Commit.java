package etamine.storage;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What one transaction changed, told after it is durable.
 *
 * @param revision the book's revision after it
 * @param at when
 * @param label what was done
 * @param documents the documents saved or removed
 * @param entries the ledger entries appended
 */
public record Commit(long revision, Instant at, String label, List<DocumentChange> documents, List<Posting> entries) {

    /**
     * One document's change.
     *
     * @param shelf its shelf
     * @param document the revision written; {@link Document#removed()} if it was removed
     */
    public record DocumentChange(String shelf, Document document) {}

    /**
     * One appended entry.
     *
     * @param ledger the ledger's name
     * @param entry the entry
     */
    public record Posting(String ledger, LedgerEntry entry) {}

    /** Copies the lists. */
    public Commit {
        documents = List.copyOf(documents);
        entries = List.copyOf(entries);
    }

    /** Whether it touched one of these shelves or ledgers. */
    public boolean touches(Set<String> names) {
        return documents.stream().anyMatch(change -> names.contains(change.shelf()))
                || entries.stream().anyMatch(posting -> names.contains(posting.ledger()));
    }

    /** The names of the shelves and ledgers it touched. */
    public Set<String> touched() {
        Set<String> names = documents.stream().map(DocumentChange::shelf).collect(Collectors.toSet());
        entries.forEach(posting -> names.add(posting.ledger()));
        return names;
    }
}
