package etamine.storage.sql.internal;

import static etamine.storage.sql.internal.BookContract.assertRefused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Progress;
import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.Document;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import etamine.storage.Selection;
import etamine.storage.medium.MediumBook;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SqliteFaultsTest {
    private static final LedgerForm MOVEMENTS = new LedgerForm("movements", List.of("item"), List.of("quantity"));
    private static final int PAGE = 4096;

    @TempDir
    Path folder;

    private final SqliteBooks books = new SqliteBooks();
    private Path file;

    @BeforeEach
    void makesABookOfSomeSize() {
        file = folder.resolve("kitchen.book");
        try (Book book = books.create(file.toString())) {
            book.prepare(new ModuleFormat("inventory", 1, List.of(MOVEMENTS), List.of()));
            fill(book, "start", 200);
        }
    }

    private static void fill(Book book, String name, int count) {
        book.write("Fill", transaction -> {
            for (int i = 0; i < count; i++) {
                transaction.save("recipes", name + i, 0, "{\"text\":\"" + "x".repeat(500) + "\"}");
            }
            return null;
        });
    }

    private Book open() {
        return books.open(file.toString());
    }

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

    private List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            'Order more cream and crème fraîche',      a text file
            '{\"etamine\": \"1\"}',                    a text file
            '%PDF-1.7 and so on',                      a PDF document
            'PK\u0003\u0004 and so on',                an archive
            '\u0000\u0001\u0002 and so on',            some other file
            '',                                        an empty file
            """)
    void aForeignFileIsNamedForWhatItIsAndLeftAlone(String content, String what) throws IOException {
        Path foreign = Files.writeString(folder.resolve("foreign"), content);
        assertThatThrownBy(() -> books.open(foreign.toString()))
                .isInstanceOfSatisfying(
                        BookException.class, problem -> assertThat(problem.reason()).isEqualTo(Reason.FOREIGN))
                .hasMessageContaining(what)
                .hasMessageContaining(foreign.toString());
        assertRefused(Reason.EXISTS, () -> books.create(foreign.toString()));
        assertRefused(
                Reason.FOREIGN,
                () -> books.restore(foreign, folder.resolve("new").toString(), Progress.unseen()));
        assertThat(foreign).hasContent(content);
        assertThat(names()).containsExactly("foreign", "kitchen.book");
    }

    @Test
    void aFolderIsNoBook() {
        assertRefused(Reason.FOREIGN, () -> books.open(folder.toString()));
        assertRefused(Reason.EXISTS, () -> books.create(folder.toString()));
    }

    @Test
    void aDatabaseOfAnotherProgramIsForeign() throws SQLException {
        Path other = folder.resolve("other.db");
        try (Session session = new Session(SqliteFile.writing(other))) {
            session.run("create table birds (name text)");
        }
        assertRefused(Reason.FOREIGN, () -> books.open(other.toString()));
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
            overwrite(page * PAGE, "noise".repeat(PAGE / 5).getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        }
        Path copy = folder.resolve("copy.book");
        try (Book book = open()) {
            assertThat(book.integrity()).isPresent();
            assertRefused(Reason.DAMAGED, () -> book.shelf("recipes").all());
            assertRefused(Reason.DAMAGED, () -> book.backup(copy, Progress.unseen()));
        }
        assertRefused(
                Reason.DAMAGED,
                () -> books.restore(file, folder.resolve("new").toString(), Progress.unseen()));
        assertThat(names()).containsExactly("kitchen.book");
    }

    @Test
    void aDocumentWithoutItsLatestRevisionIsFoundByTheIntegrityCheck() throws SQLException {
        try (Session session = new Session(SqliteFile.writing(file))) {
            session.run("delete from revisions where id = 'start7'");
        }
        try (Book book = open()) {
            assertThat(book.integrity()).hasValueSatisfying(damage -> assertThat(damage)
                    .contains("recipes/start7"));
        }
    }

    @Test
    void aBookOfANewerProgramOpensForReadingOnlyAndStaysAsItIs() throws SQLException, IOException {
        try (Session session = new Session(SqliteFile.writing(file))) {
            session.run("pragma user_version = " + (Schema.FORMAT + 1));
        }
        byte[] before = Files.readAllBytes(file);
        try (Book book = open()) {
            assertThat(book.readOnly()).hasValueSatisfying(reason -> assertThat(reason)
                    .contains("newer program", "book format 2", "Update the program"));
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
            assertThat(book.readOnly()).hasValueSatisfying(reason -> assertThat(reason).contains(why));
            LedgerForm wider = new LedgerForm("movements", List.of("item", "lot"), List.of("quantity"));
            LedgerForm unmade = new LedgerForm("waste", List.of("item"), List.of("quantity"));
            book.prepare(new ModuleFormat("inventory", 1, List.of(wider, unmade), List.of()));
            assertThat(book.shelf("recipes").all()).hasSize(200);
            assertThat(book.ledger("movements").sums(Selection.all(), List.of("lot"))).isEmpty();
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

    @Test
    void remainsOfAnotherBookAreNeverTakenOver() throws IOException {
        Path remains = Files.writeString(folder.resolve("new.book-wal"), "remains");
        assertRefused(Reason.EXISTS, () -> books.create(folder.resolve("new.book").toString()));
        assertThat(remains).hasContent("remains");
    }

    @Test
    void theSameBookUnderAnotherNameIsInUse() throws IOException {
        Path other = Files.createSymbolicLink(folder.resolve("shortcut.book"), file);
        try (Book book = open()) {
            assertRefused(Reason.IN_USE, () -> books.open(other.toString()));
            assertRefused(
                    Reason.IN_USE,
                    () -> books.restore(file, folder.resolve("new").toString(), Progress.unseen()));
            fill(book, "more", 1);
        }
        try (Book book = books.open(other.toString())) {
            assertThat(book.shelf("recipes").get("more0")).isPresent();
        }
    }

    @Test
    void aClosedBookIsASingleFile() throws IOException {
        try (Book book = open()) {
            fill(book, "more", 1);
        }
        assertThat(names()).containsExactly("kitchen.book");
    }

    @Test
    void aStoppedBackupLeavesNothing() throws IOException {
        Progress stopping = new Progress() {
            @Override
            public void at(String step, double share) {
                assertThat(share).isBetween(0.0, 1.0);
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        Path copy = folder.resolve("copy.book");
        assertRefused(Reason.OTHER, () -> books.restore(file, copy.toString(), stopping));
        try (Book book = open()) {
            assertRefused(Reason.OTHER, () -> book.backup(copy, stopping));
            fill(book, "more", 1);
        }
        assertThat(names()).containsExactly("kitchen.book");
    }

    @Test
    void aBackupIsASingleFileWithAllThatWasCommitted() throws IOException {
        Path copy = folder.resolve("copy.book");
        try (Book book = open()) {
            fill(book, "more", 1);
            book.backup(copy, Progress.unseen());
            fill(book, "later", 1);
            assertThat(names()).contains("copy.book").doesNotContain("copy.book-wal", "copy.book-shm");
        }
        try (Book book = books.open(copy.toString())) {
            assertThat(book.shelf("recipes").get("more0")).isPresent();
            assertThat(book.shelf("recipes").get("later0")).isEmpty();
        }
    }

    @Test
    void aPlaceThatCannotBeIsNamed() {
        assertRefused(Reason.OTHER, () -> books.create(folder.resolve("no/such/folder/new.book").toString()));
        assertRefused(Reason.OTHER, () -> books.open("a\0b"));
        assertRefused(Reason.MISSING, () -> books.open(folder.resolve("no.book").toString()));
    }

    @Test
    void aServerIsAnsweredWithALaterVersion() {
        String server = "jdbc:postgresql://host/kitchen";
        assertThat(books.accepts(server)).isFalse();
        assertThat(books.accepts(file.toString())).isTrue();
        assertThatThrownBy(() -> books.open(server)).isInstanceOf(BookException.class).hasMessageContaining("later version");
    }

    @Test
    void aLedgerColumnCannotCarrySql() {
        LedgerForm form = new LedgerForm("bad", List.of("item text); drop table commits; --"), List.of());
        try (Book book = open()) {
            assertThatThrownBy(() -> book.prepare(new ModuleFormat("bad", 1, List.of(form), List.of())))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThat(book.shelf("recipes'; drop table commits; --").all()).isEmpty();
            assertThat(book.integrity()).isEmpty();
        }
    }

    @Test
    void oddNamesAndTextsComeBackAsTheyWere() {
        Set<String> odd = Set.of("'", "\"", "%_", "ß/Ł", "\uD83C\uDF72", "a b", "--", "\\");
        try (Book book = open()) {
            book.write("Odd", transaction -> {
                odd.forEach(id -> transaction.save("odd", id, 0, "\"" + id + "\""));
                return null;
            });
            assertThat(book.shelf("odd").all()).extracting(Document::id).containsExactlyInAnyOrderElementsOf(odd);
            odd.forEach(id ->
                    assertThat(book.shelf("odd").get(id)).map(Document::json).contains("\"" + id + "\""));
        }
    }
}
