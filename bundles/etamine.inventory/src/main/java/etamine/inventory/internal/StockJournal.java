package etamine.inventory.internal;

import etamine.base.Subscription;
import etamine.kitchen.stock.MovementKind;
import etamine.storage.Book;
import etamine.storage.Commit;
import etamine.storage.Ledger;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.ModuleFormat;
import etamine.storage.Selection;
import java.time.Instant;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;

/**
 * The stock ledger and its sums by lot. The sums are read from the ledger once, when they are first asked for, and from
 * then on follow each commit, so that the number of entries doesn't matter.
 */
@Component(service = StockJournal.class)
public final class StockJournal {
    static final String LEDGER = "movements";
    static final String AMOUNT = "amount";
    static final LedgerForm FORM = new LedgerForm(
            LEDGER,
            List.of("item", "place", "lot", "dimension", "use_by", "unit_cost", "since", "kind"),
            List.of(AMOUNT));
    private static final List<String> BY_LOT =
            List.of("item", "place", "lot", "dimension", "use_by", "unit_cost", "since");

    private final Book book;
    private final Subscription subscription;
    private final Map<String, Long> moves = new ConcurrentHashMap<>();
    private @Nullable Map<String, Map<LotKey, Long>> sums;
    private long readAt;

    /** Makes the ledger ready. */
    @Activate
    public StockJournal(@Reference Book book) {
        this.book = book;
        book.prepare(new ModuleFormat("etamine.inventory", 1, List.of(FORM), List.of()));
        subscription = book.follow(this::follow);
    }

    /** Stops following the book. */
    @Deactivate
    public void close() {
        subscription.close();
    }

    Book book() {
        return book;
    }

    Ledger ledger() {
        return book.ledger(LEDGER);
    }

    /**
     * The amounts by lot of every item that ever moved; of one with nothing left, an empty map. An item all of whose
     * movements were taken back may be left out.
     */
    synchronized Map<String, Map<LotKey, Long>> amounts() {
        return Collections.unmodifiableMap(new TreeMap<>(sums()));
    }

    /** The amounts by lot of one item. */
    synchronized Map<LotKey, Long> amounts(String item) {
        return sums().getOrDefault(item, Map.of());
    }

    /** The amounts as they were after everything up to that instant. */
    Map<String, Map<LotKey, Long>> amounts(Instant at) {
        return read(Selection.all().before(at.plusMillis(1)));
    }

    /** The amounts as they were before that instant. */
    Map<String, Map<LotKey, Long>> amountsBefore(Instant at) {
        return read(Selection.all().before(at));
    }

    /** Every entry of an item in the order it happened. */
    List<LedgerEntry> entries(String item) {
        return ledger().entries(Selection.all().where("item", item));
    }

    /** The entries of an item of one kind, with those that take them back, in the order it happened. */
    List<LedgerEntry> entries(String item, MovementKind kind) {
        return ledger().entries(Selection.all().where("item", item).where("kind", Draft.text(kind)));
    }

    /** How often an item has moved since the book was opened, so that figures made from it can tell they are old. */
    long moves(String item) {
        return moves.getOrDefault(item, 0L);
    }

    private Map<String, Map<LotKey, Long>> sums() {
        Map<String, Map<LotKey, Long>> known = sums;
        while (known == null || sums == null) {
            long before = book.revision();
            known = read(Selection.all());
            if (before == book.revision()) {
                readAt = before;
                sums = known;
            }
        }
        return known;
    }

    private Map<String, Map<LotKey, Long>> read(Selection selection) {
        Map<String, Map<LotKey, Long>> read = new HashMap<>();
        ledger().sums(selection, List.of("item", "kind"))
                .forEach(sum -> read.put(sum.keys().get("item"), new TreeMap<>()));
        ledger().sums(selection, BY_LOT)
                .forEach(sum -> read.computeIfAbsent(sum.keys().get("item"), key -> new TreeMap<>())
                        .put(LotKey.of(sum.keys()), sum.measures().get(AMOUNT)));
        return read;
    }

    private synchronized void follow(Commit commit) {
        for (Commit.Posting posting : commit.entries()) {
            if (posting.ledger().equals(LEDGER)) {
                moves.merge(posting.entry().keys().get("item"), 1L, Long::sum);
                add(commit.revision(), posting.entry());
            }
        }
    }

    private void add(long revision, LedgerEntry entry) {
        Map<String, Map<LotKey, Long>> known = sums;
        if (known == null || revision <= readAt) {
            return;
        }
        Map<LotKey, Long> lots = new TreeMap<>(known.getOrDefault(entry.keys().get("item"), Map.of()));
        lots.merge(LotKey.of(entry.keys()), entry.measures().get(AMOUNT), StockJournal::sumOrNothing);
        known.put(entry.keys().get("item"), lots);
    }

    private static @Nullable Long sumOrNothing(long one, long other) {
        long sum = Math.addExact(one, other);
        return sum == 0 ? null : Long.valueOf(sum);
    }
}
