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
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SqliteFilesTest extends KitchenFile {

    @Test
    void aLockFileLeftBehindKeepsNobodyOut() throws IOException {
        for (String content : List.of("", "-", "1234")) {
            Files.writeString(folder.resolve("kitchen.book.lock"), content);
            open().close();
            assertThat(names()).containsExactly("kitchen.book");
        }
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
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
                        BookException.class,
                        problem -> assertThat(problem.reason()).isEqualTo(Reason.FOREIGN))
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
    void remainsOfAnotherBookAreNeverTakenOver() throws IOException {
        Path remains = Files.writeString(folder.resolve("new.book-wal"), "remains");
        assertRefused(
                Reason.EXISTS, () -> books.create(folder.resolve("new.book").toString()));
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
        assertRefused(
                Reason.OTHER,
                () -> books.create(folder.resolve("no/such/folder/new.book").toString()));
        assertRefused(Reason.OTHER, () -> books.open("a\0b"));
        assertRefused(Reason.MISSING, () -> books.open(folder.resolve("no.book").toString()));
    }

    @Test
    void aServerIsAnsweredWithALaterVersion() {
        String server = "jdbc:postgresql://host/kitchen";
        assertThat(books.accepts(server)).isFalse();
        assertThat(books.accepts(file.toString())).isTrue();
        assertThatThrownBy(() -> books.open(server))
                .isInstanceOf(BookException.class)
                .hasMessageContaining("later version");
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
