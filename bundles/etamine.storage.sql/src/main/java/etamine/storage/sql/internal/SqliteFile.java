package etamine.storage.sql.internal;

import etamine.base.Progress;
import etamine.storage.BookException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.Set;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** The file of an open book: how it is connected to, whether it may be written, how it is copied. */
final class SqliteFile implements SqlMedium.Place {
    private static final int PATIENCE_MILLIS = 5_000;
    private static final Set<PosixFilePermission> WRITING =
            Set.of(PosixFilePermission.OWNER_WRITE, PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);

    private final String location;
    private final Path file;
    private final BookLock lock;
    private final Optional<String> writeProtection;
    private volatile Optional<String> newer = Optional.empty();

    SqliteFile(String location, Path file, BookLock lock) {
        this.location = location;
        this.file = file;
        this.lock = lock;
        this.writeProtection = writeProtection(file);
    }

    @Override
    public String location() {
        return location;
    }

    @Override
    public Optional<String> readOnly() {
        return newer.or(() -> writeProtection);
    }

    /** Says that the file has a later format than this program writes. */
    void isNewer(int format) {
        newer = Optional.of("The book " + location + " was written by a newer program (book format " + format
                + ", this program knows " + Schema.FORMAT
                + "), so it may only be read. Update the program to write in it.");
    }

    Connection connect(boolean writes) throws SQLException {
        if (writeProtection.isPresent()) {
            return hasUnfinishedWork(file) ? readOnly(file.toString()) : unchanging(file);
        }
        return writes ? writing(file) : readOnly(file.toString());
    }

    /** A connection that makes every commit durable before it returns. */
    static Connection writing(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        return connect(file.toString(), config);
    }

    /** A connection to a file that nobody changes meanwhile; it leaves nothing beside it. */
    static Connection unchanging(Path file) throws SQLException {
        return readOnly(file.toUri() + "?immutable=1");
    }

    private static Connection readOnly(String name) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        return connect(name, config);
    }

    private static Connection connect(String name, SQLiteConfig config) throws SQLException {
        config.setBusyTimeout(PATIENCE_MILLIS);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + name);
        return source.getConnection();
    }

    /** Whether commits of a program that ended early still lie beside the file, to be taken over by a writer. */
    static boolean hasUnfinishedWork(Path file) {
        try {
            Path log = FileKind.beside(file, "-wal");
            return Files.exists(log) && Files.size(log) > 0;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static Optional<String> writeProtection(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (!mayWrite(file)) {
            return Optional.of("The file " + file
                    + " is write-protected, so the book may only be read. Change its permissions or use a copy.");
        }
        return mayWrite(folder)
                ? Optional.empty()
                : Optional.of("Nothing may be written in the folder " + folder
                        + ", so the book may only be read. Change its permissions or use a copy elsewhere.");
    }

    /** Also false for the all-powerful user when the permissions let nobody write, because that is what they say. */
    private static boolean mayWrite(Path path) {
        try {
            PosixFileAttributeView view = Files.getFileAttributeView(path, PosixFileAttributeView.class);
            boolean someone =
                    view == null || view.readAttributes().permissions().stream().anyMatch(WRITING::contains);
            return someone && Files.isWritable(path);
        } catch (IOException problem) {
            return Files.isWritable(path);
        }
    }

    @Override
    public void backup(Connections connections, Path target, Progress progress) {
        new SqliteCopy(target, progress).of(connections);
    }

    @Override
    public void leave() {
        lock.close();
    }

    /** Checks that the tables are there and notes if they are of a later format. */
    void examine(Session session) throws SQLException {
        Set<String> tables = Set.copyOf(
                session.list("select name from sqlite_schema where type = 'table'", row -> row.getString(1)));
        int format = session.first("pragma user_version", row -> row.getInt(1)).orElse(0);
        if (format > Schema.FORMAT) {
            isNewer(format);
        } else if (!tables.containsAll(Schema.TABLES) || format < 1) {
            throw new BookException(
                    BookException.Reason.DAMAGED,
                    "The book " + location + " is damaged: tables are missing. Put it aside and restore the last"
                            + " backup.");
        }
    }
}
