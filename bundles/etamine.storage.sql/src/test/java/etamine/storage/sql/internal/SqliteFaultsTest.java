package etamine.storage.sql.internal;

import static etamine.storage.sql.internal.BookContract.assertRefused;
import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Progress;
import etamine.storage.Book;
import etamine.storage.BookException.Reason;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import etamine.storage.Selection;
import etamine.storage.medium.MediumBook;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

class SqliteFaultsTest extends KitchenFile {

    private void overwrite(long position, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(bytes), position);
        }
    }

    private void cutTo(long size) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.truncate(size);
        }
    }

    @Test
    void aTruncatedBookIsDamaged() throws IOException {
        cutTo(Files.size(file) - PAGE);
        assertRefused(Reason.DAMAGED, this::open);
        cutTo(60);
        assertRefused(Reason.DAMAGED, this::open);
        assertThat(names()).containsExactly("kitchen.book");
    }

    @Test
    void aBookWithAnOverwrittenFirstPageIsDamaged() throws IOException {
        overwrite(100, new byte[PAGE - 100]);
        assertRefused(Reason.DAMAGED, this::open);
        assertThat(names()).containsExactly("kitchen.book");
    }

    @Test
    void aBookWithoutItsTablesIsDamaged() throws SQLException {
        try (Session session = new Session(SqliteFile.writing(file))) {
            session.run("drop table commits");
        }
        assertRefused(Reason.DAMAGED, this::open);
    }

    @Test
    void overwrittenPagesAreFoundByTheIntegrityCheckAndNotBackedUp() throws IOException {
        for (long page = 20; page < 30; page++) {
            overwrite(page * PAGE, "noise".repeat(PAGE / 5).getBytes(StandardCharsets.US_ASCII));
        }
        Path copy = folder.resolve("copy.book");
        try (Book book = open()) {
            assertThat(book.integrity()).isPresent();
            assertRefused(Reason.DAMAGED, () -> book.shelf("recipes").all());
            assertRefused(Reason.DAMAGED, () -> book.backup(copy, Progress.unseen()));
        }
        assertRefused(
                Reason.DAMAGED, () -> books.restore(file, folder.resolve("new").toString(), Progress.unseen()));
        assertThat(names()).containsExactly("kitchen.book");
    }

    @Test
    void aDocumentWithoutItsLatestRevisionIsFoundByTheIntegrityCheck() throws SQLException {
        try (Session session = new Session(SqliteFile.writing(file))) {
            session.run("delete from revisions where id = 'start7'");
        }
        try (Book book = open()) {
            assertThat(book.integrity())
                    .hasValueSatisfying(damage -> assertThat(damage).contains("recipes/start7"));
        }
    }

    @Test
    void aBookOfANewerProgramOpensForReadingOnlyAndStaysAsItIs() throws SQLException, IOException {
        try (Session session = new Session(SqliteFile.writing(file))) {
            session.run("pragma user_version = " + (Schema.FORMAT + 1));
        }
        byte[] before = Files.readAllBytes(file);
        try (Book book = open()) {
            assertThat(book.readOnly())
                    .hasValueSatisfying(reason ->
                            assertThat(reason).contains("newer program", "book format 2", "Update the program"));
            assertThat(book.shelf("recipes").all()).hasSize(200);
            assertRefused(Reason.READ_ONLY, () -> fill(book, "more", 1));
        }
        assertThat(file).hasBinaryContent(before);
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "has no POSIX permissions")
    void aWriteProtectedFileOpensForReadingOnly() throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        assertReadsOnly("write-protected");
        assertThat(names()).containsExactly("kitchen.book");
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "has no POSIX permissions")
    void aFileInAWriteProtectedFolderOpensForReadingOnly() throws IOException {
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            assertReadsOnly("folder");
            assertThat(names()).containsExactly("kitchen.book");
        } finally {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    private void assertReadsOnly(String why) {
        try (Book book = open()) {
            assertThat(book.readOnly())
                    .hasValueSatisfying(reason -> assertThat(reason).contains(why));
            LedgerForm wider = new LedgerForm("movements", List.of("item", "lot"), List.of("quantity"));
            LedgerForm unmade = new LedgerForm("waste", List.of("item"), List.of("quantity"));
            book.prepare(new ModuleFormat("inventory", 1, List.of(wider, unmade), List.of()));
            assertThat(book.shelf("recipes").all()).hasSize(200);
            assertThat(book.ledger("movements").sums(Selection.all(), List.of("lot")))
                    .isEmpty();
            assertThat(book.ledger("waste").entries(Selection.all())).isEmpty();
            assertThat(book.ledger("waste").sums(Selection.all(), List.of())).isEmpty();
            assertRefused(Reason.READ_ONLY, () -> fill(book, "more", 1));
            assertThat(book.integrity()).isEmpty();
        }
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "has no POSIX permissions")
    void aReadOnlyBookThatNeedsAMigrationSaysSo() throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        ModuleFormat.Migration step = new ModuleFormat.Migration(1, context -> context.shelf("recipes"));
        try (Book book = open()) {
            assertRefused(
                    Reason.READ_ONLY,
                    () -> book.prepare(new ModuleFormat("inventory", 2, List.of(MOVEMENTS), List.of(step))));
        }
    }

    @Test
    void aFullDiskLeavesTheBookAsItWasAndUsableOnceThereIsRoom() {
        SqlMedium medium = books.medium(file.toString());
        try (Book book = new MediumBook(medium, Clock.systemUTC())) {
            long revision = book.revision();
            limitPages(medium, 1);
            assertRefused(Reason.NO_ROOM, () -> fill(book, "more", 2_000));
            assertThat(book.shelf("recipes").all()).hasSize(200);
            assertThat(book.revision()).isEqualTo(revision);
            assertThat(book.history().undoable()).isEmpty();
            limitPages(medium, Integer.MAX_VALUE);
            fill(book, "more", 2_000);
            assertThat(book.shelf("recipes").all()).hasSize(2_200);
            assertThat(book.integrity()).isEmpty();
        }
    }

    /** SQLite takes a limit below the present size as that size. */
    private static void limitPages(SqlMedium medium, int pages) {
        medium.connections().write(session -> {
            session.list("pragma max_page_count = " + pages, row -> row.getLong(1));
            return null;
        });
    }
}
