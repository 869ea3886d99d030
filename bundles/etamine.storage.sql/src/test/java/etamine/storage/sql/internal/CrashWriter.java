package etamine.storage.sql.internal;

import etamine.storage.Book;
import etamine.storage.Document;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import etamine.storage.Transaction;
import java.io.PrintStream;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * The program that gets killed: writes numbered transactions for ever and says each number after its write returned.
 * One transaction saves a document of its own, changes a common one and appends two entries.
 */
final class CrashWriter {
    static final LedgerForm MOVEMENTS = new LedgerForm("movements", List.of("number"), List.of("quantity"));
    static final String COUNTER = "counter";

    private final Book book;
    private final PrintStream out;

    private CrashWriter(Book book, PrintStream out) {
        this.book = book;
        this.out = out;
    }

    /** Opens the book named by the first argument and writes until killed. */
    public static void main(String[] arguments) {
        Book book = new SqliteBooks().open(arguments[0]);
        prepare(book);
        new CrashWriter(book, System.out).writeUntilKilled();
    }

    static void prepare(Book book) {
        book.prepare(new ModuleFormat("crash", 1, List.of(MOVEMENTS), List.of()));
    }

    static int counter(Book book) {
        return book.shelf("counters")
                .get(COUNTER)
                .map(Document::json)
                .map(Integer::valueOf)
                .orElse(0);
    }

    private void writeUntilKilled() {
        for (int number = counter(book) + 1; ; number++) {
            int next = number;
            book.write("Write " + next, transaction -> change(transaction, next));
            out.println(next);
            out.flush();
        }
    }

    private static boolean change(Transaction transaction, int number) {
        transaction.save("papers", String.valueOf(number), 0, "\"" + "paper ".repeat(number % 900 + 1) + "\"");
        transaction.append("movements", entry(number, "in", 7));
        transaction.append("movements", entry(number, "out", -6));
        transaction.save("counters", COUNTER, Document.ANY, String.valueOf(number));
        return true;
    }

    private static LedgerEntry entry(int number, String kind, long quantity) {
        return LedgerEntry.of(
                number + kind,
                Instant.ofEpochSecond(number),
                Map.of("number", String.valueOf(number)),
                Map.of("quantity", quantity),
                "{}");
    }
}
