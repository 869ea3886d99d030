package etamine.storage.sql.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Progress;
import etamine.storage.Book;
import etamine.storage.BookException.Reason;
import etamine.storage.Codec;
import etamine.storage.Document;
import etamine.storage.LiveShelf;
import etamine.storage.ModuleFormat;
import etamine.storage.ModuleFormat.Migration;
import etamine.storage.Selection;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What every book promises about undo, migrations, live shelves and backups, on top of {@link LedgerContract}. */
abstract class WholeBookContract extends LedgerContract {

    private static final Codec<String> PLAIN = new Codec<>() {
        @Override
        public String read(String id, String json) {
            if (json.startsWith("bad")) {
                throw new IllegalArgumentException("/: this one is bad");
            }
            return json;
        }

        @Override
        public String write(String value) {
            return value;
        }
    };

    private static ModuleFormat format(int version, Migration... migrations) {
        return new ModuleFormat("recipes", version, List.of(), List.of(migrations));
    }

    private String content(String id) {
        return book.shelf("recipes").get(id).map(Document::json).orElse("");
    }

    @Test
    void undoGivesDocumentsTheirFormerContentAndRedoTheLatter() {
        save("stock", 0, "1");
        save("stock", 1, "2");
        book.write("Remove stock", transaction -> {
            transaction.remove("recipes", "stock", 2);
            return null;
        });
        List<String> seen = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            seen.add(book.history().undo().orElse("") + ":" + content("stock"));
        }
        assertThat(seen).containsExactly("Remove stock:2", "Save stock:1", "Save stock:");
        assertThat(book.history().undo()).isEmpty();
        seen.clear();
        for (int i = 0; i < 3; i++) {
            seen.add(book.history().redo().orElse("") + ":" + content("stock"));
        }
        assertThat(seen).containsExactly("Save stock:1", "Save stock:2", "Remove stock:");
        assertThat(book.history().redo()).isEmpty();
        assertThat(book.shelf("recipes").history("stock"))
                .extracting(Document::revision)
                .containsExactly(1L, 2L, 3L, 4L, 5L, 6L, 7L, 8L, 9L);
    }

    @Test
    void aNewTransactionClearsWhatCouldBeRedone() {
        save("stock", 0, "1");
        book.history().undo();
        assertThat(book.history().redoable()).contains("Save stock");
        book.write("Nothing", transaction -> null);
        assertThat(book.history().redoable()).contains("Save stock");
        save("sauce", 0, "1");
        assertThat(book.history().redoable()).isEmpty();
        assertThat(book.history().undoable()).contains("Save sauce");
    }

    @Test
    void undoTakesBackAWholeTransactionInOne() {
        book.write("Load", transaction -> {
            transaction.save("recipes", "a", 0, "1");
            transaction.save("plates", "b", 0, "2");
            transaction.append("movements", movement("m", "2026-11-24T08:00:00Z", "cream", "bar", 3));
            return null;
        });
        book.history().undo();
        assertThat(book.revision()).isEqualTo(2);
        assertThat(book.shelf("recipes").all()).isEmpty();
        assertThat(book.shelf("plates").all()).isEmpty();
        assertThat(movements().sums(Selection.all(), List.of())).isEmpty();
    }

    @Test
    void undoIsRefusedWhenSomeoneElseChangedTheDocument() {
        book.prepare(format(1));
        save("stock", 0, "1");
        book.prepare(format(
                2,
                new Migration(1, context -> context.transaction().save("recipes", "stock", Document.ANY, "migrated"))));
        assertRefused(Reason.STALE, () -> book.history().undo());
        assertThat(content("stock")).isEqualTo("migrated");
        assertThat(book.history().undoable()).contains("Save stock");
    }

    @Test
    void undoEndsWithTheSession() {
        save("stock", 0, "1");
        reopen();
        assertThat(book.history().undoable()).isEmpty();
        assertThat(book.history().undo()).isEmpty();
        assertThat(content("stock")).isEqualTo("1");
    }

    @Test
    void migrationsRunOnceInOrderAndSeeWhatTheEarlierOnesDid() {
        book.prepare(format(1));
        save("stock", 0, "1");
        Migration add = new Migration(
                1,
                context -> context.shelf("recipes")
                        .all()
                        .forEach(document -> context.transaction()
                                .save("recipes", document.id(), document.revision(), document.json() + " two")));
        Migration more = new Migration(2, context -> {
            assertThat(context.shelf("recipes").get("stock"))
                    .map(Document::json)
                    .contains("1 two");
            context.shelf("recipes")
                    .all()
                    .forEach(document -> context.transaction()
                            .save("recipes", document.id(), document.revision(), document.json() + " three"));
        });
        for (int i = 0; i < 2; i++) {
            book.prepare(format(3, more, add));
            assertThat(content("stock")).isEqualTo("1 two three");
            assertThat(book.shelf("recipes").history("stock")).hasSize(2);
            reopen();
        }
    }

    @Test
    void aNewModuleStartsAtItsPresentFormat() {
        List<Integer> ran = new ArrayList<>();
        book.prepare(format(2, new Migration(1, context -> ran.add(1))));
        assertThat(ran).isEmpty();
        assertThat(book.revision()).isZero();
    }

    @Test
    void aMigrationThatThrowsLeavesEverythingAsItWas() {
        book.prepare(format(1));
        save("stock", 0, "1");
        Migration fails = new Migration(1, context -> {
            context.transaction().save("recipes", "stock", 1, "half");
            throw new IllegalStateException("a migration that fails on purpose");
        });
        assertThatThrownBy(() -> book.prepare(format(2, fails))).hasMessage("a migration that fails on purpose");
        assertThat(content("stock")).isEqualTo("1");
        book.prepare(format(
                2, new Migration(1, context -> context.transaction().save("recipes", "stock", 1, "whole"))));
        assertThat(content("stock")).isEqualTo("whole");
    }

    @Test
    void aModuleFormatNewerThanTheProgramMakesTheBookReadOnly() {
        book.prepare(format(3));
        save("stock", 0, "1");
        reopen();
        book.prepare(format(2));
        assertThat(book.readOnly())
                .hasValueSatisfying(reason -> assertThat(reason).contains("newer recipes"));
        assertRefused(Reason.READ_ONLY, () -> save("stock", 1, "2"));
        assertThat(book.history().undoable()).isEmpty();
        assertThat(content("stock")).isEqualTo("1");
    }

    @Test
    void aLiveShelfFollowsAndKeepsUnreadableDocumentsAside() {
        save("a", 0, "1");
        save("b", 0, "bad");
        try (LiveShelf<String> shelf = new LiveShelf<>(book, "recipes", PLAIN)) {
            assertThat(shelf.values()).isEqualTo(Map.of("a", "1"));
            assertThat(shelf.unreadable()).containsOnlyKeys("b");
            book.write("Change", transaction -> {
                shelf.save(transaction, "a", "2");
                shelf.save(transaction, "a", "3");
                shelf.remove(transaction, "b");
                shelf.save(transaction, "c", "4");
                return null;
            });
            assertThat(shelf.values()).isEqualTo(Map.of("a", "3", "c", "4"));
            assertThat(shelf.unreadable()).isEmpty();
            book.history().undo();
            assertThat(shelf.values()).isEqualTo(Map.of("a", "1"));
            assertThat(content("b")).isEqualTo("bad");
        }
    }

    @Test
    void aBackupIsAWholeBookAndIsRestoredWhereNoneIs() {
        save("stock", 0, "1");
        append(movement("a", "2026-11-24T08:00:00Z", "cream", "bar", 3));
        Path copy = folder.resolve("copy.book");
        book.backup(copy, Progress.unseen());
        save("stock", 1, "2");
        assertRefused(Reason.EXISTS, () -> book.backup(copy, Progress.unseen()));
        assertRefused(Reason.EXISTS, () -> books.restore(copy, location("kitchen.book"), Progress.unseen()));
        books.restore(copy, location("second.book"), Progress.unseen());
        try (Book second = books.open(location("second.book"))) {
            second.prepare(new ModuleFormat("inventory", 1, List.of(MOVEMENTS), List.of()));
            assertThat(second.shelf("recipes").get("stock")).map(Document::json).contains("1");
            assertThat(second.ledger("movements").entries(Selection.all()))
                    .isEqualTo(movements().entries(Selection.all()));
            assertThat(second.revision()).isEqualTo(2);
            assertThat(second.integrity()).isEmpty();
        }
    }

    @Test
    void onlyASoundBackupIsRestored() throws IOException {
        Path text = Files.writeString(folder.resolve("notes.txt"), "Order more cream. Order more cream. Salt too.");
        assertRefused(Reason.FOREIGN, () -> books.restore(text, location("new.book"), Progress.unseen()));
        assertRefused(
                Reason.MISSING, () -> books.restore(folder.resolve("no"), location("new.book"), Progress.unseen()));
        assertThat(books.exists(location("new.book"))).isFalse();
    }
}
