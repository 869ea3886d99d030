package etamine.diary.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.covers.WrittenUse;
import etamine.kitchen.exchange.DocumentSection;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.storage.Book;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Expected use stated outright, a document per day and item. */
@Component(service = ExchangeSection.class)
public final class UseSection extends DocumentSection {

    /** The section of the open book. */
    @Activate
    public UseSection(@Reference Book book) {
        super(book, Entries.USE, "etamine.diary");
    }

    @Override
    protected String understand(ObjectNode entry) {
        return id(Entries.use(entry));
    }

    @Override
    protected List<Trouble> check(ObjectNode entry, Facts facts) {
        return check(Entries.use(entry), facts);
    }

    private static String id(WrittenUse use) {
        return Entries.useId(use.date(), use.item());
    }

    private static List<Trouble> check(WrittenUse use, Facts facts) {
        return References.item(use.item(), use.quantity(), facts);
    }
}
