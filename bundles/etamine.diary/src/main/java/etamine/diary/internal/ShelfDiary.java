package etamine.diary.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.diary.ServiceDiary;
import etamine.kitchen.covers.Diary;
import etamine.kitchen.covers.Sale;
import etamine.kitchen.covers.WrittenUse;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.Kept;
import etamine.measures.Ratio;
import etamine.storage.Book;
import etamine.storage.LiveShelf;
import etamine.storage.ModuleFormat;
import etamine.storage.Transaction;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;

/** The diary on three shelves and a ledger of the book. */
@Component(service = {ServiceDiary.class, Diary.class, ShelfDiary.class})
public final class ShelfDiary implements ServiceDiary {
    private final Book book;
    private final LiveShelf<Kept<Entries.Covers>> covers;
    private final LiveShelf<Kept<Entries.Mix>> mix;
    private final LiveShelf<Kept<WrittenUse>> use;
    private final SalesLedger sales;

    /** Follows the open book. */
    @Activate
    public ShelfDiary(@Reference Book book) {
        this.book = book;
        book.prepare(new ModuleFormat("etamine.diary", 1, List.of(SalesLedger.FORM), List.of()));
        covers = new LiveShelf<>(book, Entries.COVERS, Kept.codec(Entries::covers));
        mix = new LiveShelf<>(book, Entries.MIX, Kept.codec(Entries::mix));
        use = new LiveShelf<>(book, Entries.USE, Kept.codec(Entries::use));
        sales = new SalesLedger(book);
    }

    /** Lets go of the book. */
    @Deactivate
    public void close() {
        covers.close();
        mix.close();
        use.close();
    }

    @Override
    public Map<LocalDate, Integer> covers(LocalDate from, LocalDate to) {
        Map<LocalDate, Integer> days = new TreeMap<>();
        for (Kept<Entries.Covers> kept : covers.values().values()) {
            LocalDate date = kept.value().date();
            if (!date.isBefore(from) && !date.isAfter(to)) {
                days.put(date, kept.value().covers());
            }
        }
        return days;
    }

    @Override
    public Map<String, Ratio> mix() {
        Map<String, Ratio> portions = new TreeMap<>();
        mix.values()
                .values()
                .forEach(
                        kept -> portions.put(kept.value().recipe(), kept.value().perCover()));
        return portions;
    }

    @Override
    public List<Sale> sales(LocalDate from, LocalDate to) {
        return sales.between(from, to);
    }

    @Override
    public List<WrittenUse> writtenUse(LocalDate from, LocalDate to) {
        return use.values().values().stream()
                .map(Kept::value)
                .filter(line -> !line.date().isBefore(from) && !line.date().isAfter(to))
                .sorted(Comparator.comparing(WrittenUse::date).thenComparing(WrittenUse::item))
                .toList();
    }

    @Override
    public void setCovers(Map<LocalDate, OptionalInt> days) {
        String label =
                days.size() == 1 ? "Covers of " + days.keySet().iterator().next() : "Covers of several days";
        book.write(label, transaction -> {
            new TreeMap<>(days).forEach((date, number) -> setCovers(transaction, date, number));
            return days.size();
        });
    }

    @Override
    public void setMix(String recipe, Ratio perCover) {
        Entries.notNegative(perCover.signum(), "perCover");
        Entries.Mix value = new Entries.Mix(recipe, perCover);
        write(
                "Menu mix of " + recipe,
                transaction ->
                        mix.save(transaction, recipe, new Kept<>(value, Entries.fill(document(mix, recipe), value))));
    }

    @Override
    public void removeMix(String recipe) {
        write("Take " + recipe + " off the menu mix", transaction -> remove(mix, transaction, recipe));
    }

    @Override
    public void setUse(WrittenUse line) {
        Entries.notNegative(line.quantity().signum(), "quantity");
        String id = Entries.useId(line.date(), line.item());
        write(
                "Expected use of " + line.item() + " on " + line.date(),
                transaction -> use.save(transaction, id, new Kept<>(line, Entries.fill(document(use, id), line))));
    }

    @Override
    public void removeUse(LocalDate date, String item) {
        write(
                "Take back the expected use of " + item + " on " + date,
                transaction -> remove(use, transaction, Entries.useId(date, item)));
    }

    @Override
    public void setSold(LocalDate date, String recipe, long sold) {
        if (sold < 0) {
            throw new IllegalArgumentException("The number sold must not be less than 0.");
        }
        write("Sales of " + recipe + " on " + date, transaction -> sales.adjust(transaction, sold(date, recipe), sold));
    }

    /** Every sale there is. */
    List<Sale> allSales() {
        return sales.all();
    }

    /** The ledger, for loading. */
    SalesLedger ledger() {
        return sales;
    }

    /** Documents that could not be read: {@code shelf/id} to the reason. */
    Map<String, String> unreadable() {
        Map<String, String> all = new TreeMap<>();
        covers.unreadable().forEach((id, why) -> all.put(Entries.COVERS + "/" + id, why));
        mix.unreadable().forEach((id, why) -> all.put(Entries.MIX + "/" + id, why));
        use.unreadable().forEach((id, why) -> all.put(Entries.USE + "/" + id, why));
        return all;
    }

    private Sale sold(LocalDate date, String recipe) {
        return sales.between(date, date).stream()
                .filter(sale -> sale.recipe().equals(recipe))
                .findFirst()
                .orElseGet(() -> new Sale(date, recipe, 0));
    }

    private void setCovers(Transaction transaction, LocalDate date, OptionalInt number) {
        String id = date.toString();
        if (number.isEmpty()) {
            remove(covers, transaction, id);
            return;
        }
        Entries.Covers value = new Entries.Covers(date, Entries.notNegative(number.getAsInt(), "covers"));
        covers.save(transaction, id, new Kept<>(value, Entries.fill(document(covers, id), value)));
    }

    private void write(String label, Consumer<Transaction> work) {
        book.write(label, transaction -> {
            work.accept(transaction);
            return label;
        });
    }

    private static <T> ObjectNode document(LiveShelf<Kept<T>> shelf, String id) {
        return shelf.get(id).map(kept -> kept.json().deepCopy()).orElseGet(EntryJson::empty);
    }

    private static <T> void remove(LiveShelf<Kept<T>> shelf, Transaction transaction, String id) {
        if (shelf.revision(id) > 0) {
            shelf.remove(transaction, id);
        }
    }
}
