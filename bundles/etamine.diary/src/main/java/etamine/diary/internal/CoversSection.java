package etamine.diary.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.DocumentSection;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.storage.Book;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Covers by day, a document per day. */
@Component(service = ExchangeSection.class)
public final class CoversSection extends DocumentSection {

    /** The section of the open book. */
    @Activate
    public CoversSection(@Reference Book book) {
        super(book, Entries.COVERS, "etamine.diary");
    }

    @Override
    protected String understand(ObjectNode entry) {
        return Entries.covers(entry).date().toString();
    }

    @Override
    protected List<Trouble> check(ObjectNode entry, Facts facts) {
        return List.of();
    }
}
