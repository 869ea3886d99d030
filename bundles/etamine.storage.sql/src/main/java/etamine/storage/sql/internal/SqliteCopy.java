package etamine.storage.sql.internal;

import etamine.base.Progress;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.util.Optional;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import org.sqlite.core.DB;

/**
 * Makes a copy of a book under a provisional name, checks it by opening it and then gives it its name, so that a file
 * of that name is always a whole and sound book.
 *
 * @param target the new file
 * @param progress who watches
 */
record SqliteCopy(Path target, Progress progress) {
    private static final double COPYING = 0.7;

    /** What makes the file under its provisional name. */
    @FunctionalInterface
    interface Maker {
        void make(Path part) throws SQLException;
    }

    /** Copies an open book as it is at this moment; it stays usable meanwhile. */
    void of(Connections book) {
        book.read(session -> {
            provisionally(part -> {
                copy(session, part);
                check(part);
            });
            return true;
        });
    }

    /** Copies a file that nobody has open. */
    void of(Path file) {
        provisionally(part -> {
            try (Session source = new Session(SqliteFile.unchanging(file))) {
                copy(source, part);
            }
            check(part);
        });
    }

    /** Lets {@code maker} make a file under a provisional name and, if all went well, gives it its name. */
    void provisionally(Maker maker) {
        requireFree(target);
        Path folder = target.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            throw new BookException(Reason.OTHER, "There is no folder " + folder + "; make it first.");
        }
        try {
            Path part = Files.createTempFile(folder, "." + target.getFileName() + "-", ".part");
            try {
                maker.make(part);
                force(part);
                Files.move(part, target);
                force(folder);
            } finally {
                Files.deleteIfExists(part);
                Files.deleteIfExists(FileKind.beside(part, "-journal"));
            }
        } catch (SQLException problem) {
            throw new SqliteDialect().problem(problem, target.toString());
        } catch (FileAlreadyExistsException appearedMeanwhile) {
            throw exists(target);
        } catch (IOException problem) {
            throw new BookException(
                    Reason.NO_ROOM, target + " could not be written: " + problem.getMessage() + ".", problem);
        }
    }

    /** Copies what the source holds now; the transaction keeps later commits from starting the copy again. */
    private void copy(Session source, Path part) throws SQLException {
        progress.at("Copying", 0);
        DB database = source.connection().unwrap(SQLiteConnection.class).getDatabase();
        source.run("begin");
        source.first("select count(*) from meta", row -> row.getInt(1));
        try {
            int code = database.backup(
                    "main", part.toString(), (left, all) -> progress.at("Copying", COPYING * (all - left) / all));
            if (code != SQLiteErrorCode.SQLITE_OK.code) {
                throw new SQLiteException("the copy stopped early", SQLiteErrorCode.getErrorCode(code));
            }
        } finally {
            source.run("rollback");
        }
    }

    private void check(Path part) throws SQLException {
        if (progress.cancelled()) {
            throw new BookException(Reason.OTHER, "Stopped as asked; " + target + " was not written.");
        }
        progress.at("Checking the copy", COPYING);
        try (Session copy = new Session(SqliteFile.unchanging(part))) {
            Optional<String> damage = new SqliteDialect().integrity(copy);
            if (damage.isPresent()) {
                throw new BookException(
                        Reason.DAMAGED,
                        target + " was not written because the copy failed its check: " + damage.get() + ".");
            }
        }
        progress.at("Checked", 1);
    }

    private static void requireFree(Path target) {
        if (Files.exists(target)) {
            throw exists(target);
        }
        Path remains = FileKind.beside(target, "-wal");
        if (Files.exists(remains)) {
            throw exists(remains);
        }
    }

    private static BookException exists(Path file) {
        return new BookException(Reason.EXISTS, file + " is already there; choose another name or move it.");
    }

    private static void force(Path path) throws IOException {
        boolean folder = Files.isDirectory(path);
        try (FileChannel channel =
                FileChannel.open(path, folder ? StandardOpenOption.READ : StandardOpenOption.WRITE)) {
            channel.force(true);
        } catch (IOException problem) {
            if (!folder) {
                throw problem;
            }
        }
    }
}
