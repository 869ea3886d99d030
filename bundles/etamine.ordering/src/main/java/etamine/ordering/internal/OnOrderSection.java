package etamine.ordering.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.DocumentSection;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.ordering.internal.OnOrderForm.Coming;
import etamine.storage.Book;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** What is on its way without an order in the book, a document per supplier, item and day. */
@Component(service = ExchangeSection.class)
public final class OnOrderSection extends DocumentSection {

    /** The section of the open book. */
    @Activate
    public OnOrderSection(@Reference Book book) {
        super(book, Names.ON_ORDER, Names.MODULE);
    }

    @Override
    protected String understand(ObjectNode entry) {
        return OnOrderForm.read(entry).id();
    }

    @Override
    protected List<Trouble> check(ObjectNode entry, Facts facts) {
        Coming coming = OnOrderForm.read(entry);
        List<Trouble> troubles = new ArrayList<>(References.item(coming.item(), facts));
        troubles.addAll(References.supplier(coming.supplier(), facts));
        return troubles;
    }
}
