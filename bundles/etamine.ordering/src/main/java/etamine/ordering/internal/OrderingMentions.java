package etamine.ordering.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.ReplacedMembers;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemMentions;
import etamine.kitchen.item.Replacement;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.par.Par;
import etamine.ordering.internal.OnOrderForm.Coming;
import etamine.storage.Book;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Where pars, orders and what is on its way name an item. Two pars become one for both. */
@Component
public final class OrderingMentions implements ItemMentions {
    private final Book book;
    private final ShelfPars pars;
    private final ShelfOrders orders;
    private final Neighbours neighbours;

    /** Looks through the shelves of this module. */
    @Activate
    public OrderingMentions(
            @Reference Book book,
            @Reference ShelfPars pars,
            @Reference ShelfOrders orders,
            @Reference Neighbours neighbours) {
        this.book = book;
        this.pars = pars;
        this.orders = orders;
        this.neighbours = neighbours;
    }

    @Override
    public List<Mention> of(String item) {
        List<Mention> mentions = new ArrayList<>();
        Optional.ofNullable(pars.all().get(item))
                .ifPresent(par -> mentions.add(new Mention("par", item, "Par of " + par.par())));
        orders.all().stream()
                .filter(order ->
                        order.lines().stream().anyMatch(line -> line.item().equals(item)))
                .forEach(order -> mentions.add(mention(order)));
        return mentions;
    }

    private Mention mention(SupplierOrder order) {
        String text = "Order " + order.id() + " to " + neighbours.supplierName(order.supplier()) + " for "
                + order.deliver() + ", " + order.state().name().toLowerCase(Locale.ROOT);
        return new Mention("order", order.id(), text);
    }

    @Override
    public int rewrite(Transaction transaction, Item from, Item into) {
        ReplacedMembers members = new ReplacedMembers(new Replacement(from, into));
        return par(transaction, members) + orders(transaction, members) + coming(transaction, members);
    }

    private int par(Transaction transaction, ReplacedMembers members) {
        Item from = members.replacement().from();
        Item into = members.replacement().into();
        Optional<Document> old = there(transaction, Names.PARS, from.id());
        if (old.isEmpty()) {
            return 0;
        }
        ObjectNode entry = EntryJson.read(old.get().json());
        List.of("par", "orderAt", "capacity").forEach(member -> members.quantity(entry, member));
        if (entry.path("weekdays") instanceof ObjectNode days) {
            List<String> names = new ArrayList<>();
            days.fieldNames().forEachRemaining(names::add);
            names.forEach(day -> members.quantity(days, day));
        }
        members.item(entry);
        Optional<Document> other = there(transaction, Names.PARS, into.id());
        ObjectNode both = other.map(document -> EntryJson.read(document.json())).orElse(entry);
        if (other.isPresent()) {
            Par sum = new JoinedPars(into).of(ParForm.read(both), ParForm.read(entry));
            ParForm.write(both, sum);
        }
        transaction.remove(Names.PARS, from.id(), old.get().revision());
        transaction.save(Names.PARS, into.id(), other.map(Document::revision).orElse(0L), both.toString());
        return 1;
    }

    private int orders(Transaction transaction, ReplacedMembers members) {
        int rewritten = 0;
        for (Document document : book.shelf(Names.ORDERS).all()) {
            ObjectNode entry = EntryJson.read(document.json());
            boolean named = false;
            for (JsonNode each : entry.path("lines")) {
                if (each instanceof ObjectNode line && members.names(line)) {
                    members.pack(line, "pack");
                    members.item(line);
                    named = true;
                }
            }
            if (named) {
                transaction.save(Names.ORDERS, document.id(), document.revision(), entry.toString());
                rewritten++;
            }
        }
        return rewritten;
    }

    private int coming(Transaction transaction, ReplacedMembers members) {
        int rewritten = 0;
        for (Document document : book.shelf(Names.ON_ORDER).all()) {
            ObjectNode entry = EntryJson.read(document.json());
            if (members.names(entry)) {
                Coming before = OnOrderForm.read(entry);
                new ComingOrders(List.of(before), neighbours.catalogue())
                        .code(before)
                        .ifPresent(code -> entry.put("code", code));
                members.item(entry);
                transaction.remove(Names.ON_ORDER, document.id(), document.revision());
                put(transaction, entry);
                rewritten++;
            }
        }
        return rewritten;
    }

    /** The packs of one article that come with one delivery are one entry. */
    private static void put(Transaction transaction, ObjectNode entry) {
        String id = OnOrderForm.read(entry).id();
        Optional<Document> same = there(transaction, Names.ON_ORDER, id);
        same.ifPresent(document -> entry.put(
                "packs",
                OnOrderForm.read(EntryJson.read(document.json())).packs()
                        + entry.path("packs").asLong()));
        transaction.save(Names.ON_ORDER, id, Document.ANY, entry.toString());
    }

    private static Optional<Document> there(Transaction transaction, String shelf, String id) {
        return transaction.get(shelf, id).filter(document -> !document.removed());
    }
}
