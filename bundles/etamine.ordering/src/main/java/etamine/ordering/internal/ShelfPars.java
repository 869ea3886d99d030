package etamine.ordering.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.Kept;
import etamine.kitchen.par.Par;
import etamine.kitchen.par.Pars;
import etamine.ordering.ParBook;
import etamine.storage.Book;
import etamine.storage.LiveShelf;
import etamine.storage.ModuleFormat;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;

/** The pars on a shelf of the book, a document per item. */
@Component(service = {ParBook.class, Pars.class, ShelfPars.class})
public final class ShelfPars implements ParBook {
    private final Book book;
    private final LiveShelf<Kept<Par>> shelf;

    /** Follows the open book. */
    @Activate
    public ShelfPars(@Reference Book book) {
        this.book = book;
        book.prepare(new ModuleFormat(Names.MODULE, 1, List.of(), List.of()));
        shelf = new LiveShelf<>(book, Names.PARS, Kept.codec(ParForm::read));
    }

    /** Lets go of the book. */
    @Deactivate
    public void close() {
        shelf.close();
    }

    @Override
    public Map<String, Par> all() {
        Map<String, Par> pars = new TreeMap<>();
        shelf.values().values().forEach(kept -> pars.put(kept.value().item(), kept.value()));
        return Collections.unmodifiableMap(pars);
    }

    @Override
    public void set(Par par) {
        book.write("Par of " + par.item(), transaction -> {
            ObjectNode node =
                    shelf.get(par.item()).map(kept -> kept.json().deepCopy()).orElseGet(EntryJson::empty);
            shelf.save(transaction, par.item(), new Kept<>(par, ParForm.write(node, par)));
            return par;
        });
    }

    @Override
    public void remove(String item) {
        book.write("Take away the par of " + item, transaction -> {
            if (shelf.revision(item) > 0) {
                shelf.remove(transaction, item);
            }
            return item;
        });
    }

    /** Documents that could not be read: id to reason. */
    Map<String, String> unreadable() {
        return shelf.unreadable();
    }
}
