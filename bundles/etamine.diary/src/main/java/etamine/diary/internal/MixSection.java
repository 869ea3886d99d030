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

/** The menu mix, a document per recipe. */
@Component(service = ExchangeSection.class)
public final class MixSection extends DocumentSection {

    /** The section of the open book. */
    @Activate
    public MixSection(@Reference Book book) {
        super(book, Entries.MIX, "etamine.diary");
    }

    @Override
    protected String understand(ObjectNode entry) {
        return Entries.mix(entry).recipe();
    }

    @Override
    protected List<Trouble> check(ObjectNode entry, Facts facts) {
        return References.recipe(Entries.mix(entry).recipe(), facts);
    }
}
