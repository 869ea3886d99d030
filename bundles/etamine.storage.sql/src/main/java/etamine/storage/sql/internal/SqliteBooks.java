package etamine.storage.sql.internal;

import etamine.base.Progress;
import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.Books;
import etamine.storage.medium.MediumBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;

/** Books in SQLite files, one each. */
@Component
public final class SqliteBooks implements Books {
    private static final String JDBC = "jdbc:";

    private final Clock clock;
    private final Dialect dialect = new SqliteDialect();

    /** Books dated by the system's clock. */
    @Activate
    public SqliteBooks() {
        this(Clock.systemUTC());
    }

    /** Books dated by that clock. */
    SqliteBooks(Clock clock) {
        this.clock = clock;
    }

    @Override
    public boolean accepts(String location) {
        return !location.startsWith(JDBC);
    }

    @Override
    public boolean exists(String location) {
        return Files.exists(path(location));
    }

    @Override
    public Book create(String location) {
        new SqliteCopy(path(location), Progress.unseen()).provisionally(this::make);
        return open(location);
    }

    private void make(Path file) throws SQLException {
        try (Session session = new Session(SqliteFile.writing(file))) {
            session.run(dialect.begin());
            session.run("pragma application_id = " + FileKind.APPLICATION_ID);
            session.run("pragma user_version = " + Schema.FORMAT);
            new Schema(dialect).create(session);
            session.run(
                    "insert into meta (name, value) values ('created', ?)",
                    clock.instant().toString());
            session.run("commit");
        }
    }

    @Override
    public Book open(String location) {
        return new MediumBook(medium(location), clock);
    }

    SqlMedium medium(String location) {
        Path file = real(path(location));
        BookLock lock = BookLock.take(file, () -> FileKind.requireBook(file));
        try {
            return medium(new SqliteFile(location, file, lock));
        } catch (RuntimeException problem) {
            lock.close();
            throw problem;
        }
    }

    private SqlMedium medium(SqliteFile file) {
        Connections connections = new Connections(file.location(), dialect, file::connect);
        try {
            connections.read(session -> {
                file.examine(session);
                return true;
            });
            return new SqlMedium(file, connections, dialect);
        } catch (RuntimeException problem) {
            connections.close();
            throw problem;
        }
    }

    @Override
    public void restore(Path backup, String location, Progress progress) {
        Path target = path(location);
        Path source = real(backup);
        BookLock lock = BookLock.take(source, () -> FileKind.requireBook(source));
        try {
            if (SqliteFile.hasUnfinishedWork(source)) {
                throw new BookException(
                        Reason.OTHER,
                        backup + " was not closed properly. Open and close it as a book first, then restore it.");
            }
            new SqliteCopy(target, progress).of(source);
        } finally {
            lock.close();
        }
    }

    private static Path path(String location) {
        if (location.startsWith(JDBC)) {
            throw new BookException(
                    Reason.OTHER,
                    "A book on a PostgreSQL server comes with a later version; give the path of a file instead of "
                            + location + ".");
        }
        try {
            return Path.of(location).toAbsolutePath();
        } catch (InvalidPathException problem) {
            throw new BookException(Reason.OTHER, location + " cannot be the name of a file.", problem);
        }
    }

    private static Path real(Path file) {
        try {
            return Files.exists(file)
                    ? file.toRealPath()
                    : file.toAbsolutePath().normalize();
        } catch (IOException problem) {
            throw new BookException(Reason.OTHER, file + " cannot be reached: " + problem.getMessage(), problem);
        }
    }
}
