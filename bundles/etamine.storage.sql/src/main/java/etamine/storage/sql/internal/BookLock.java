package etamine.storage.sql.internal;

import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import java.io.IOException;
import java.lang.System.Logger;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Keeps a book to one opener. Between processes by a lock on {@code <book>.lock} beside it, which the system drops when
 * the process ends however it ends; inside this process by name, because closing a second channel on the same file would
 * drop the first one's lock.
 */
final class BookLock implements AutoCloseable {
    private static final Logger LOG = System.getLogger(BookLock.class.getName());
    private static final byte[] REMOVED = {'-'};
    private static final int ATTEMPTS = 5;
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final Path book;
    private final Path file;
    private final Optional<FileChannel> channel;

    private BookLock(Path book, Path file, Optional<FileChannel> channel) {
        this.book = book;
        this.file = file;
        this.channel = channel;
    }

    /**
     * Takes the lock.
     *
     * @param book the real path of the book
     * @param check runs first, when it is certain that this process does not have the book open
     * @throws BookException with reason IN_USE if it is taken
     */
    static BookLock take(Path book, Runnable check) {
        if (!HELD.add(book)) {
            throw inUse(book, "already open in this program");
        }
        try {
            check.run();
            Path file = FileKind.beside(book, ".lock");
            return new BookLock(book, file, lock(book, file));
        } catch (BookException problem) {
            HELD.remove(book);
            throw problem;
        }
    }

    private static Optional<FileChannel> lock(Path book, Path file) {
        try {
            for (int attempt = 1; ; attempt++) {
                Optional<FileChannel> channel = open(file);
                if (channel.isEmpty()) {
                    return channel;
                }
                if (channel.get().tryLock() == null) {
                    channel.get().close();
                    throw inUse(book, "open in another program");
                }
                if (channel.get().size() == 0 || attempt == ATTEMPTS) {
                    channel.get().truncate(0);
                    return channel;
                }
                channel.get().close();
            }
        } catch (IOException problem) {
            throw new BookException(Reason.OTHER, book + " cannot be locked: " + problem.getMessage() + ".", problem);
        }
    }

    /** The lock file; empty where nobody may write beside the book, so that nobody can have it open for writing. */
    private static Optional<FileChannel> open(Path file) throws IOException {
        try {
            return Optional.of(FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE));
        } catch (FileSystemException problem) {
            if (!Files.isWritable(file.toAbsolutePath().getParent())) {
                return Optional.empty();
            }
            throw problem;
        }
    }

    @Override
    public void close() {
        channel.ifPresent(this::remove);
        HELD.remove(book);
    }

    /**
     * Marks the file as removed before removing it, so that whoever has just opened it tries again; where there is no
     * room for the mark the file stays, which does no harm.
     */
    private void remove(FileChannel open) {
        try (open) {
            open.write(ByteBuffer.wrap(REMOVED), 0);
            Files.deleteIfExists(file);
        } catch (IOException problem) {
            LOG.log(Logger.Level.DEBUG, "The lock " + file + " could not be removed", problem);
        }
    }

    private static BookException inUse(Path book, String how) {
        return new BookException(
                Reason.IN_USE, "The book " + book + " is " + how + ". Close it there first, then try again.");
    }
}
