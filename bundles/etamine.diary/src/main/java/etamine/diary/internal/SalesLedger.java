package etamine.diary.internal;

import etamine.kitchen.covers.Sale;
import etamine.storage.Book;
import etamine.storage.Ledger;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.Selection;
import etamine.storage.Transaction;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * What was sold, by day and recipe. A day's entries stand at noon UTC, so that a change of the house's zone moves no
 * sale to another day; the day itself is a key.
 */
final class SalesLedger {
    static final LedgerForm FORM = new LedgerForm(Entries.SALES, List.of("date", "recipe"), List.of("sold"));

    private final Ledger ledger;

    SalesLedger(Book book) {
        ledger = book.ledger(FORM.name());
    }

    /** The sales of these days, summed by day and recipe, in that order. */
    List<Sale> between(LocalDate from, LocalDate to) {
        return sales(Selection.all().since(noon(from)).before(noon(to.plusDays(1))));
    }

    /** All sales. */
    List<Sale> all() {
        return sales(Selection.all());
    }

    /** Brings the total of a day and recipe from one number to another. */
    void adjust(Transaction transaction, Sale before, long sold) {
        if (sold != before.sold()) {
            transaction.append(
                    FORM.name(),
                    LedgerEntry.of(
                            UUID.randomUUID().toString(),
                            noon(before.date()),
                            Map.of("date", before.date().toString(), "recipe", before.recipe()),
                            Map.of("sold", sold - before.sold()),
                            "{}"));
        }
    }

    private List<Sale> sales(Selection selection) {
        return ledger.sums(selection, FORM.keys()).stream()
                .map(SalesLedger::sale)
                .sorted(Comparator.comparing(Sale::date).thenComparing(Sale::recipe))
                .toList();
    }

    private static Sale sale(Ledger.Sum sum) {
        return new Sale(
                LocalDate.parse(sum.keys().get("date")),
                sum.keys().get("recipe"),
                sum.measures().get("sold"));
    }

    private static Instant noon(LocalDate date) {
        return date.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC);
    }
}
