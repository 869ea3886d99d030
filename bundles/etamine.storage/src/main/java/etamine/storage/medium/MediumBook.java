package etamine.storage.medium;

import etamine.base.Exemption;
import etamine.base.Progress;
import etamine.base.Subscription;
import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.Commit;
import etamine.storage.History;
import etamine.storage.Ledger;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import etamine.storage.Shelf;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** A book on a {@link Medium}: gathers each transaction's changes and commits them in one batch. Thread-safe. */
@Exemption(
        rule = "exported-types",
        because = "transactions, undo and migrations are written once here, to be extended over any medium")
public class MediumBook implements Book {
    private final Medium medium;
    private final Clock clock;
    private final Map<String, LedgerForm> forms = new ConcurrentHashMap<>();
    private final Announcements announcements;
    private final StepHistory history;
    private final ReentrantLock turn = new ReentrantLock(true);
    private boolean running;
    private volatile Optional<String> newerModule = Optional.empty();
    private volatile boolean closed;

    /** A book on that medium, which it closes; {@code clock} dates its documents and commits. */
    public MediumBook(Medium medium, Clock clock) {
        this.medium = medium;
        this.clock = clock;
        this.announcements = new Announcements(medium.revision());
        this.history = new StepHistory(this, medium);
    }

    @Override
    public String location() {
        return medium.location();
    }

    @Override
    public Optional<String> readOnly() {
        return medium.readOnly().or(() -> newerModule);
    }

    @Override
    public void prepare(ModuleFormat format) {
        turn.lock();
        try {
            requireOpen();
            Migrations migrations = new Migrations(format, medium.moduleFormat(format.module()));
            format.ledgers().forEach(form -> forms.put(form.name(), form));
            if (migrations.bookIsNewer()) {
                newerModule = Optional.of(migrations.whyReadOnly());
            }
            if (readOnly().isPresent()) {
                migrations.requireNone(location());
                return;
            }
            Draft draft = new Draft(medium, forms, migrations.label(), clock.instant());
            run(draft, () -> migrations.run(medium, draft));
            Optional<Commit> commit = draft.toCommit(medium.revision() + 1);
            if (commit.isPresent() || !medium.holds(format)) {
                medium.commit(new Batch(commit, Optional.of(format)));
                commit.ifPresent(announcements::tell);
            }
        } finally {
            turn.unlock();
        }
    }

    @Override
    public Shelf shelf(String name) {
        return new EditedShelf(medium, name, new Edits());
    }

    @Override
    public Ledger ledger(String name) {
        LedgerForm form = forms.get(name);
        if (form == null) {
            throw new IllegalArgumentException("No module has declared a ledger named " + name);
        }
        return medium.ledger(form);
    }

    @Override
    public <T> T write(String label, Work<T> work) {
        return write(label, work, history::done);
    }

    <T> T write(String label, Work<T> work, Consumer<Commit> afterwards) {
        turn.lock();
        try {
            requireOpen();
            readOnly().ifPresent(reason -> {
                throw new BookException(BookException.Reason.READ_ONLY, reason);
            });
            Draft draft = new Draft(medium, forms, label, clock.instant());
            T result = run(draft, () -> work.in(draft));
            draft.toCommit(medium.revision() + 1).ifPresent(commit -> {
                medium.commit(new Batch(Optional.of(commit), Optional.empty()));
                afterwards.accept(commit);
                announcements.tell(commit);
            });
            return result;
        } finally {
            turn.unlock();
        }
    }

    <T> T inTurn(Supplier<T> work) {
        turn.lock();
        try {
            return work.get();
        } finally {
            turn.unlock();
        }
    }

    private <T> T run(Draft draft, Supplier<T> work) {
        if (running) {
            throw new IllegalStateException("A transaction is already running on this thread");
        }
        running = true;
        try {
            return work.get();
        } finally {
            draft.end();
            running = false;
        }
    }

    private void requireOpen() {
        if (closed) {
            throw new BookException(
                    BookException.Reason.OTHER, "The book " + location() + " is closed; open it again.");
        }
    }

    @Override
    public long revision() {
        return medium.revision();
    }

    @Override
    public History history() {
        return history;
    }

    @Override
    public long followed() {
        return announcements.followed();
    }

    @Override
    public Subscription follow(Consumer<Commit> follower) {
        return announcements.addFollower(follower);
    }

    @Override
    public Subscription onCommit(Consumer<Commit> listener) {
        return announcements.add(listener);
    }

    @Override
    public void backup(Path target, Progress progress) {
        requireOpen();
        medium.backup(target, progress);
    }

    @Override
    public Optional<String> integrity() {
        requireOpen();
        return medium.integrity();
    }

    @Override
    public void close() {
        turn.lock();
        try {
            if (!closed) {
                closed = true;
                medium.close();
            }
        } finally {
            turn.unlock();
        }
    }
}
