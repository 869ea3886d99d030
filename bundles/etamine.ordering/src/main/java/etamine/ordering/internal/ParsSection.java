package etamine.ordering.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.DocumentSection;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.Facts;
import etamine.kitchen.par.Par;
import etamine.measures.Quantity;
import etamine.storage.Book;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The pars, a document per item. */
@Component(service = ExchangeSection.class)
public final class ParsSection extends DocumentSection {

    /** The section of the open book. */
    @Activate
    public ParsSection(@Reference Book book) {
        super(book, Names.PARS, Names.MODULE);
    }

    @Override
    protected String understand(ObjectNode entry) {
        return ParForm.read(entry).item();
    }

    @Override
    protected List<Trouble> check(ObjectNode entry, Facts facts) {
        Par par = ParForm.read(entry);
        List<Trouble> troubles = new ArrayList<>(References.item(par.item(), facts));
        if (troubles.isEmpty()) {
            levels(par)
                    .forEach((pointer, level) ->
                            troubles.addAll(References.countable(par.item(), level, pointer, facts)));
        }
        return troubles;
    }

    private static Map<String, Quantity> levels(Par par) {
        Map<String, Quantity> levels = new LinkedHashMap<>();
        levels.put("/par", par.par());
        par.weekdays().forEach((day, level) -> levels.put("/weekdays/" + ParForm.letters(day), level));
        par.orderAt().ifPresent(level -> levels.put("/orderAt", level));
        par.capacity().ifPresent(level -> levels.put("/capacity", level));
        return levels;
    }
}
