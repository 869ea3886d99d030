package etamine.storage.medium;

import etamine.storage.BookException;
import etamine.storage.Commit;
import etamine.storage.Document;
import etamine.storage.History;
import etamine.storage.Transaction;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Undo and redo as the same act: taking back a commit. Undo takes back the commit of a write, redo takes back the
 * commit of that undo. Only names and revisions are kept; contents are read from the book's own past.
 */
final class StepHistory implements History {
    private final MediumBook book;
    private final Medium medium;
    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> undone = new ArrayDeque<>();
    private final Map<Place, Long> known = new HashMap<>();

    private record Place(String shelf, String id) {}

    private record Written(Place place, long revision) {}

    private record Posted(String ledger, String id) {}

    private record Step(String label, List<Written> documents, List<Posted> entries) {
        static Step of(String label, Commit commit) {
            return new Step(
                    label,
                    commit.documents().stream().map(Step::written).toList(),
                    commit.entries().stream()
                            .map(posting ->
                                    new Posted(posting.ledger(), posting.entry().id()))
                            .toList());
        }

        private static Written written(Commit.DocumentChange change) {
            Document document = change.document();
            return new Written(new Place(change.shelf(), document.id()), document.revision());
        }
    }

    StepHistory(MediumBook book, Medium medium) {
        this.book = book;
        this.medium = medium;
    }

    /** Remembers a commit that can be taken back; what was undone before can no longer be redone. */
    synchronized void done(Commit commit) {
        undone.clear();
        remember(done, commit.label(), commit);
    }

    @Override
    public Optional<String> undoable() {
        return top(done);
    }

    @Override
    public Optional<String> redoable() {
        return top(undone);
    }

    @Override
    public Optional<String> undo() {
        return move(done, undone, "Undo: ");
    }

    @Override
    public Optional<String> redo() {
        return move(undone, done, "Redo: ");
    }

    private synchronized Optional<String> top(Deque<Step> steps) {
        return book.readOnly().isPresent()
                ? Optional.empty()
                : Optional.ofNullable(steps.peek()).map(Step::label);
    }

    private synchronized Optional<Step> peek(Deque<Step> steps) {
        return Optional.ofNullable(steps.peek());
    }

    private Optional<String> move(Deque<Step> from, Deque<Step> to, String prefix) {
        return book.inTurn(() -> {
            Optional<Step> step = peek(from);
            step.ifPresent(last -> {
                Consumer<Commit> moved = commit -> swap(from, to, last, commit);
                book.write(prefix + last.label, transaction -> takeBack(last, transaction, prefix), moved);
            });
            return step.map(Step::label);
        });
    }

    private synchronized void swap(Deque<Step> from, Deque<Step> to, Step step, Commit commit) {
        from.pop();
        remember(to, step.label, commit);
    }

    private void remember(Deque<Step> steps, String label, Commit commit) {
        Step step = Step.of(label, commit);
        step.documents.forEach(written -> known.put(written.place, written.revision));
        steps.push(step);
    }

    private Step takeBack(Step step, Transaction transaction, String prefix) {
        for (int i = step.entries.size() - 1; i >= 0; i--) {
            Posted posted = step.entries.get(i);
            transaction.reverse(posted.ledger, posted.id, prefix + step.label);
        }
        step.documents.forEach(written -> restore(written, step.label, transaction));
        return step;
    }

    private void restore(Written written, String label, Transaction transaction) {
        Place place = written.place;
        long now = medium.latest(place.shelf, place.id).map(Document::revision).orElse(0L);
        if (now != known.get(place)) {
            throw new BookException(
                    BookException.Reason.STALE,
                    "\"" + label + "\" cannot be taken back: " + place.shelf + "/" + place.id
                            + " has been changed since by someone else. Look at it and change it by hand.");
        }
        String before = before(written);
        if (before.isEmpty()) {
            transaction.remove(place.shelf, place.id, Document.ANY);
        } else {
            transaction.save(place.shelf, place.id, Document.ANY, before);
        }
    }

    private String before(Written written) {
        return medium.revisions(written.place.shelf, written.place.id).stream()
                .filter(document -> document.revision() == written.revision - 1)
                .findFirst()
                .map(Document::json)
                .orElse("");
    }
}
