package etamine.inventory.internal;

import etamine.kitchen.stock.StockFlow;
import etamine.kitchen.stock.StockFlows;
import etamine.measures.Dimension;
import etamine.storage.Ledger;
import etamine.storage.Selection;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Flows from three sums over the ledger: what was there before, what was there after, and each door between. */
@Component
public final class LedgerFlows implements StockFlows {
    private static final List<String> BY_DOOR = List.of("item", "kind", "dimension", "unit_cost");

    private final StockJournal journal;
    private final LotStock stock;

    /** Sums that journal and values by that stock. */
    @Activate
    public LedgerFlows(@Reference StockJournal journal, @Reference LotStock stock) {
        this.journal = journal;
        this.stock = stock;
    }

    /**
     * What moved by a door at one cost.
     *
     * @param door the kind
     * @param dimension what the amount measures
     * @param cost as a lot's key has it; empty when not known
     * @param amount base units, more than zero for what came
     */
    record Moved(String door, Dimension dimension, String cost, long amount) {}

    @Override
    public Map<String, StockFlow> between(Instant from, Instant until) {
        Map<String, ItemStock> before = stock.before(from);
        Map<String, ItemStock> after = stock.before(until);
        Map<String, List<Moved>> moved = moved(Selection.all().since(from).before(until));
        TreeSet<String> items = new TreeSet<>(before.keySet());
        items.addAll(after.keySet());
        items.addAll(moved.keySet());
        Map<String, StockFlow> flows = new TreeMap<>();
        for (String item : items) {
            ItemFlow flow = new ItemFlow(stock.valuer(item), stock.currency());
            flows.put(item, flow.of(before.get(item), after.get(item), moved.getOrDefault(item, List.of())));
        }
        return flows;
    }

    private Map<String, List<Moved>> moved(Selection selection) {
        Map<String, List<Moved>> moved = new TreeMap<>();
        for (Ledger.Sum sum : journal.ledger().sums(selection, BY_DOOR)) {
            Map<String, String> keys = sum.keys();
            moved.computeIfAbsent(keys.get("item"), item -> new ArrayList<>())
                    .add(new Moved(
                            keys.get("kind"),
                            Dimension.valueOf(keys.get("dimension")),
                            keys.get("unit_cost"),
                            sum.measures().get(StockJournal.AMOUNT)));
        }
        return moved;
    }
}
