package etamine.storage.sql.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.storage.Book;
import etamine.storage.Document;
import etamine.storage.Ledger.Sum;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import etamine.storage.Selection;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteSizeTest {
    private static final LedgerForm MOVEMENTS =
            new LedgerForm("movements", List.of("item", "place", "kind"), List.of("quantity"));
    private static final Instant START = Instant.parse("2026-01-01T00:00:00Z");

    @TempDir
    Path folder;

    @Test
    void savesTenThousandDocumentsInOneTransactionAndReadsThemBack() {
        String location = folder.resolve("large.book").toString();
        String text = "{\"lines\":\"" + "y".repeat(1_500) + "\",\"number\":";
        try (Book book = new SqliteBooks().create(location)) {
            book.write("Load", transaction -> {
                for (int i = 0; i < 10_000; i++) {
                    transaction.save("recipes", "recipe-" + i, 0, text + i + "}");
                }
                return null;
            });
        }
        try (Book book = new SqliteBooks().open(location)) {
            List<Document> all = book.shelf("recipes").all();
            assertThat(all).hasSize(10_000);
            assertThat(all)
                    .allSatisfy(document -> assertThat(document.json())
                            .endsWith(":" + document.id().substring("recipe-".length()) + "}"));
            assertThat(book.revision()).isEqualTo(1);
        }
    }

    @Test
    void sumsTwoHundredThousandEntriesByKeys() {
        Random random = new Random(7);
        Map<String, Long> expected = new TreeMap<>();
        try (Book book = new SqliteBooks().create(folder.resolve("ledger.book").toString())) {
            book.prepare(new ModuleFormat("inventory", 1, List.of(MOVEMENTS), List.of()));
            for (int batch = 0; batch < 20; batch++) {
                List<LedgerEntry> entries = movements(random, batch, expected);
                book.write("Use", transaction -> {
                    entries.forEach(entry -> transaction.append("movements", entry));
                    return null;
                });
            }
            List<Sum> sums = book.ledger("movements").sums(Selection.all(), List.of("item", "place"));
            Map<String, Long> summed = new TreeMap<>();
            sums.forEach(sum -> summed.put(
                    sum.keys().get("item") + " " + sum.keys().get("place"),
                    sum.measures().get("quantity")));
            expected.values().removeIf(total -> total == 0);
            assertThat(summed).isEqualTo(expected);
            assertThat(sums.stream().mapToLong(Sum::entries).sum()).isEqualTo(200_000);
        }
    }

    private static List<LedgerEntry> movements(Random random, int batch, Map<String, Long> expected) {
        List<LedgerEntry> entries = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            String item = "item-" + random.nextInt(90);
            String place = random.nextBoolean() ? "walk-in" : "dry store";
            long quantity = random.nextInt(2_000_000) - 1_000_000L;
            expected.merge(item + " " + place, quantity, Long::sum);
            entries.add(LedgerEntry.of(
                    batch + "-" + i,
                    START.plusSeconds(random.nextInt(30_000_000)),
                    Map.of("item", item, "place", place, "kind", "used"),
                    Map.of("quantity", quantity),
                    "{}"));
        }
        return entries;
    }
}
