package etamine.diary.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.covers.WrittenUse;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.ReplacedMembers;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemMentions;
import etamine.kitchen.item.Replacement;
import etamine.measures.Conversion;
import etamine.measures.Quantity;
import etamine.storage.Book;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Where written use names an item. What was written for both on one day is added. */
@Component
public final class UseMentions implements ItemMentions {
    private final Book book;
    private final ShelfDiary diary;

    /** Looks through the diary. */
    @Activate
    public UseMentions(@Reference Book book, @Reference ShelfDiary diary) {
        this.book = book;
        this.diary = diary;
    }

    @Override
    public List<Mention> of(String item) {
        return diary.writtenUse(LocalDate.MIN, LocalDate.MAX).stream()
                .filter(use -> use.item().equals(item))
                .map(use -> new Mention(
                        "covers", use.date().toString(), "Written use of " + use.quantity() + " on " + use.date()))
                .toList();
    }

    @Override
    public int rewrite(Transaction transaction, Item from, Item into) {
        ReplacedMembers members = new ReplacedMembers(new Replacement(from, into));
        int rewritten = 0;
        for (Document document : book.shelf(Entries.USE).all()) {
            ObjectNode entry = EntryJson.read(document.json());
            if (members.names(entry)) {
                members.quantity(entry, "quantity");
                members.item(entry);
                transaction.remove(Entries.USE, document.id(), document.revision());
                put(transaction, entry, into);
                rewritten++;
            }
        }
        return rewritten;
    }

    private static void put(Transaction transaction, ObjectNode entry, Item into) {
        WrittenUse use = Entries.use(entry);
        String id = Entries.useId(use.date(), use.item());
        Optional<Document> same = transaction.get(Entries.USE, id).filter(document -> !document.removed());
        same.ifPresent(document -> {
            Quantity there = Entries.use(EntryJson.read(document.json())).quantity();
            Conversion more = into.converter().convert(use.quantity(), there.unit());
            if (more instanceof Conversion.Missing missing) {
                throw new IllegalArgumentException("What is written for both on " + use.date() + " cannot be added. "
                        + missing.text() + " Write it on " + into.name() + ", then merge again.");
            }
            entry.put("quantity", there.plus(more.orThrow()).toString());
        });
        transaction.save(Entries.USE, id, Document.ANY, entry.toString());
    }
}
