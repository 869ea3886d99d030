package etamine.book.internal;

import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.BookSession;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The book of one call, which is made if it is not there and unmade again if what it was made for fails. */
public final class FreshBook {
    private final BookSession session;
    private final Book book;
    private final boolean made;

    private FreshBook(BookSession session, Book book, boolean made) {
        this.session = session;
        this.book = book;
        this.made = made;
    }

    /** A new book; fails where something is already. */
    public static FreshBook make(BookSession session, String location) {
        return new FreshBook(session, session.create(location), true);
    }

    /** The book that is open, else the one at that place, else a new one there. */
    public static FreshBook openOrMake(BookSession session, String location) {
        if (session.current().isPresent()) {
            return new FreshBook(session, session.current().get(), false);
        }
        try {
            return new FreshBook(session, session.open(location), false);
        } catch (BookException e) {
            if (e.reason() != Reason.MISSING) {
                throw e;
            }
            return make(session, location);
        }
    }

    /** The book, open. */
    public Book book() {
        return book;
    }

    /** Whether it was made just now. */
    public boolean made() {
        return made;
    }

    /** Closes a book that was made just now and removes its file; leaves any other as it is. */
    public void withdraw() {
        if (!made) {
            return;
        }
        String location = book.location();
        session.close();
        if (!location.startsWith("jdbc:")) {
            for (String suffix : new String[] {"", "-wal", "-shm"}) {
                remove(Path.of(location + suffix));
            }
        }
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new BookException(
                    Reason.OTHER, "The empty book " + file + " could not be removed again; remove it by hand.", e);
        }
    }
}
