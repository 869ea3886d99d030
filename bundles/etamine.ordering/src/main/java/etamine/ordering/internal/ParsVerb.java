package etamine.ordering.internal;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.item.Item;
import etamine.kitchen.par.Par;
import etamine.measures.Conversion;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.ordering.ParBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code pars}: lists the pars, or sets or removes one. */
@Component
public final class ParsVerb implements Verb {
    private final ParBook pars;
    private final Neighbours neighbours;

    /** The verb of the open book. */
    @Activate
    public ParsVerb(@Reference ParBook pars, @Reference Neighbours neighbours) {
        this.pars = pars;
        this.neighbours = neighbours;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("pars", "pars there are; with an item and a quantity, sets one", "[ITEM]", "[QUANTITY]")
                .with("--remove", "", "take the item's par away");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        List<String> given = call.arguments();
        if (given.size() == 2) {
            set(given.get(0), given.get(1));
        } else if (given.size() == 1 && call.has("--remove")) {
            pars.remove(given.get(0));
        } else if (!given.isEmpty()) {
            throw VerbException.wrongCall("Give an item and a quantity such as “8 l”, or the item and --remove.");
        }
        return list();
    }

    private void set(String id, String text) throws VerbException {
        Optional<Item> item = neighbours.item(id);
        if (neighbours.items().isPresent() && item.isEmpty()) {
            throw VerbException.rejected("There is no item “" + id + "”; add it or correct the id.");
        }
        Quantity level = quantity(text);
        if (Counting.count(item, level) instanceof Conversion.Missing missing) {
            throw VerbException.rejected(missing.text());
        }
        Par before = pars.all().get(id);
        pars.set(
                before == null
                        ? new Par(id, level, Map.of(), Optional.empty(), Optional.empty())
                        : new Par(id, level, before.weekdays(), before.orderAt(), before.capacity()));
    }

    private static Quantity quantity(String text) throws VerbException {
        try {
            return QuantityText.parse(text);
        } catch (MeasureException wrong) {
            throw VerbException.wrongCall(wrong.getMessage());
        }
    }

    private Report list() {
        List<Map<String, Object>> json = new ArrayList<>();
        TextTable table = new TextTable("Item", ">Par", "Weekdays", ">Order at", ">Capacity");
        for (Par par : pars.all().values()) {
            Map<String, Object> weekdays = new TreeMap<>();
            par.weekdays().forEach((day, level) -> weekdays.put(ParForm.letters(day), level.toString()));
            String orderAt = par.orderAt().map(Quantity::toString).orElse("");
            String capacity = par.capacity().map(Quantity::toString).orElse("");
            json.add(Values.map(
                    "item",
                    par.item(),
                    "par",
                    par.par().toString(),
                    "weekdays",
                    weekdays,
                    "orderAt",
                    orderAt,
                    "capacity",
                    capacity));
            table.row(
                    neighbours.itemName(par.item()),
                    par.par().toString(),
                    weekdays.isEmpty() ? "" : weekdays.toString().replaceAll("[{}]", ""),
                    orderAt,
                    capacity);
        }
        return Report.done(Values.map("pars", json), json.isEmpty() ? List.of("No pars are set.") : table.lines());
    }
}
