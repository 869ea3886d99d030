package etamine.testing;

import etamine.base.Progress;
import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.Books;
import etamine.storage.medium.MediumBook;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Books in memory, by any name that is not a JDBC URL; a closed one can be opened again. Thread-safe. */
public final class VolatileBooks implements Books {
    private final Clock clock;
    private final Map<String, VolatileContent> contents = new HashMap<>();
    private final Set<String> open = new HashSet<>();

    /** No books yet; those that come are dated by that clock. */
    public VolatileBooks(Clock clock) {
        this.clock = clock;
    }

    @Override
    public boolean accepts(String location) {
        return !location.startsWith("jdbc:");
    }

    @Override
    public synchronized boolean exists(String location) {
        return contents.containsKey(location);
    }

    @Override
    public synchronized Book create(String location) {
        keep(location, new VolatileContent());
        return open(location);
    }

    @Override
    public synchronized Book open(String location) {
        VolatileContent content = contents.get(location);
        if (content == null) {
            throw new BookException(Reason.MISSING, "There is no book named " + location + ".");
        }
        if (!open.add(location)) {
            throw new BookException(Reason.IN_USE, "The book " + location + " is already open.");
        }
        return new MediumBook(new VolatileMedium(location, content, () -> closed(location)), clock);
    }

    @Override
    public synchronized void restore(Path backup, String location, Progress progress) {
        keep(location, VolatileFile.read(backup));
        progress.at("Restored", 1);
    }

    private void keep(String location, VolatileContent content) {
        if (contents.putIfAbsent(location, content) != null) {
            throw new BookException(Reason.EXISTS, "There is already a book named " + location + ".");
        }
    }

    private synchronized void closed(String location) {
        open.remove(location);
    }
}
