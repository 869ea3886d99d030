package etamine.storage.sql.internal;

import etamine.storage.Book;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A book of some size in a file, for tests that treat it badly. */
abstract class KitchenFile {
    static final LedgerForm MOVEMENTS = new LedgerForm("movements", List.of("item"), List.of("quantity"));
    static final int PAGE = 4096;

    @TempDir
    Path folder;

    final SqliteBooks books = new SqliteBooks();
    Path file;

    @BeforeEach
    void makesABookOfSomeSize() {
        file = folder.resolve("kitchen.book");
        try (Book book = books.create(file.toString())) {
            book.prepare(new ModuleFormat("inventory", 1, List.of(MOVEMENTS), List.of()));
            fill(book, "start", 200);
        }
    }

    static void fill(Book book, String name, int count) {
        book.write("Fill", transaction -> {
            for (int i = 0; i < count; i++) {
                transaction.save("recipes", name + i, 0, "{\"text\":\"" + "x".repeat(500) + "\"}");
            }
            return null;
        });
    }

    Book open() {
        return books.open(file.toString());
    }

    List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
