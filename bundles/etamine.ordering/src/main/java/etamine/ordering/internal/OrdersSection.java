package etamine.ordering.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.DocumentSection;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.house.Kitchen;
import etamine.storage.Book;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The orders, a document each. An order may name items and offers that are gone: it is a record of what was agreed. */
@Component(service = ExchangeSection.class)
public final class OrdersSection extends DocumentSection {
    private final OrderForm form;

    /** The section of the open book. */
    @Activate
    public OrdersSection(@Reference Book book, @Reference Kitchen kitchen) {
        super(book, Names.ORDERS, Names.MODULE);
        form = new OrderForm(kitchen);
    }

    @Override
    protected String understand(ObjectNode entry) {
        return form.read(entry).id();
    }

    @Override
    protected List<Trouble> check(ObjectNode entry, Facts facts) {
        return References.supplier(form.read(entry).supplier(), facts);
    }
}
