package etamine.storage.medium;

import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.Commit;
import etamine.storage.Document;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.Transaction;
import etamine.storage.medium.Edits.Edit;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One transaction's changes, gathered until they are committed: one revision for each changed document, however often
 * it is saved.
 */
final class Draft implements Transaction {
    private final Medium medium;
    private final Postings postings;
    private final String label;
    private final Instant at;
    private final Thread owner = Thread.currentThread();
    private final Edits edits = new Edits();
    private List<String> asked = List.of();
    private Optional<Document> answer = Optional.empty();
    private boolean ended;

    Draft(Medium medium, Map<String, LedgerForm> forms, String label, Instant at) {
        this.medium = medium;
        this.postings = new Postings(medium, forms);
        this.label = label;
        this.at = at;
    }

    @Override
    public Optional<Document> get(String shelf, String id) {
        requireRunning();
        return latest(shelf, id).filter(document -> !document.removed());
    }

    @Override
    public long save(String shelf, String id, long expected, String json) {
        if (json.isEmpty()) {
            throw new IllegalArgumentException("A document needs content: " + shelf + "/" + id);
        }
        Optional<Document> present = expect(shelf, id, expected);
        if (present.isPresent() && present.get().json().equals(json)) {
            return present.get().revision();
        }
        return put(shelf, id, json);
    }

    @Override
    public void remove(String shelf, String id, long expected) {
        if (expect(shelf, id, expected).isPresent()) {
            put(shelf, id, "");
        }
    }

    @Override
    public void append(String ledger, LedgerEntry entry) {
        requireRunning();
        postings.append(ledger, entry);
    }

    @Override
    public void reverse(String ledger, String entryId, String reason) {
        requireRunning();
        postings.reverse(ledger, entryId, reason);
    }

    /** No more changes are taken from now on. */
    void end() {
        ended = true;
    }

    /** The edits up to now. */
    Edits edits() {
        return edits.copy();
    }

    /** All changes as the commit they make; empty if nothing changed. */
    Optional<Commit> toCommit(long revision) {
        Commit commit = new Commit(revision, at, label, edits.changes(), postings.all());
        return Optional.of(commit)
                .filter(made -> !made.documents().isEmpty() || !made.entries().isEmpty());
    }

    private long put(String shelf, String id, String json) {
        Optional<Document> base = base(shelf, id);
        long before = base.map(Document::revision).orElse(0L);
        Edit edit = new Edit(base, new Document(id, before + 1, at, label, json));
        edits.put(shelf, id, edit);
        return edit.changes() ? before + 1 : before;
    }

    private Optional<Document> base(String shelf, String id) {
        Optional<Edit> edit = edits.get(shelf, id);
        return edit.isPresent() ? edit.get().base() : stored(shelf, id);
    }

    private Optional<Document> latest(String shelf, String id) {
        Optional<Edit> edit = edits.get(shelf, id);
        return edit.isPresent() ? Optional.of(edit.get().now()) : stored(shelf, id);
    }

    /** What the medium has, kept for the next question, which mostly is about the same document. */
    private Optional<Document> stored(String shelf, String id) {
        if (!asked.equals(List.of(shelf, id))) {
            answer = medium.latest(shelf, id);
            asked = List.of(shelf, id);
        }
        return answer;
    }

    private Optional<Document> expect(String shelf, String id, long expected) {
        Optional<Document> present = get(shelf, id);
        long revision = present.map(Document::revision).orElse(0L);
        if (expected != Document.ANY && expected != revision && !isOwnChange(shelf, id, expected)) {
            throw new BookException(
                    Reason.STALE,
                    shelf + "/" + id + " has been changed since it was read (revision " + revision + ", not " + expected
                            + "). Look at it again before changing it.");
        }
        return present;
    }

    private boolean isOwnChange(String shelf, String id, long expected) {
        return edits.get(shelf, id)
                .flatMap(Edit::base)
                .filter(base -> !base.removed() && base.revision() == expected)
                .isPresent();
    }

    private void requireRunning() {
        if (ended || Thread.currentThread() != owner) {
            throw new IllegalStateException("A transaction is valid only inside Book.write, on the thread that called");
        }
    }
}
