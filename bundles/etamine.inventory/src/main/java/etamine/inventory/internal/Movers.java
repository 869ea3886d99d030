package etamine.inventory.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.inventory.RefusedException;
import etamine.inventory.RefusedException.Reason;
import etamine.inventory.internal.Netting.Taken;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.Place;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Turns what somebody wants moved into drafts of movements, by what lies where now. */
@Component(service = Movers.class)
public final class Movers {
    private final StockJournal journal;
    private final KnownItems items;
    private final PlaceShelf places;

    /** Works on that journal. */
    @Activate
    public Movers(@Reference StockJournal journal, @Reference KnownItems items, @Reference PlaceShelf places) {
        this.journal = journal;
        this.items = items;
        this.places = places;
    }

    /** A quantity in the ledger's terms; refuses unknown items, missing equivalences and what is not more than zero. */
    ItemMeasure.Amount amount(String item, Quantity quantity) {
        refuseIf(
                items.refuses(item),
                Reason.UNKNOWN_ITEM,
                "There is no item “" + item + "”; look for its id in the ingredients.");
        refuseIf(
                quantity.signum() < 0, Reason.INPUT, "Write a quantity of more than zero instead of " + quantity + ".");
        return items.measure(item).kept(quantity);
    }

    /** Drafts that take an amount out, the first lots to expire first; what is not there is taken unlotted. */
    List<Draft> take(
            MovementKind kind, String item, ItemMeasure.Amount wanted, Optional<String> place, ObjectNode why) {
        Map<LotKey, Long> lots = Netting.of(journal.amounts(item));
        return take(lots, kind, item, wanted, place, why);
    }

    /** The same from lots that earlier drafts of the same transaction have already drawn on. */
    List<Draft> take(
            Map<LotKey, Long> lots,
            MovementKind kind,
            String item,
            ItemMeasure.Amount wanted,
            Optional<String> place,
            ObjectNode why) {
        List<Taken> taken = Netting.take(
                lots,
                wanted.base(),
                lot -> lot.dimension() == wanted.dimension()
                        && place.map(lot.place()::equals).orElse(true));
        List<Draft> drafts = new ArrayList<>();
        for (Taken part : taken) {
            lots.merge(part.lot(), -part.amount(), Math::addExact);
            drafts.add(new Draft(kind, item, part.lot(), -part.amount(), why));
        }
        long rest = wanted.base() - Netting.sum(taken);
        if (rest > 0) {
            LotKey unknown = LotKey.unknown(place.orElseGet(() -> usualPlace(item)), wanted.dimension());
            drafts.add(new Draft(kind, item, unknown, -rest, why));
        }
        return drafts;
    }

    /** Where an item usually is: with its latest lot, else the first place of the walk; empty without places. */
    String usualPlace(String item) {
        return journal.amounts(item).keySet().stream()
                .filter(lot -> !lot.place().isEmpty())
                .max(Comparator.comparing(LotKey::since))
                .map(LotKey::place)
                .or(() -> places.inOrder().stream().findFirst().map(Place::id))
                .orElse("");
    }

    /** A place that exists; the item's usual one when none is named. */
    String place(String item, String named) {
        if (named.isEmpty()) {
            return usualPlace(item);
        }
        refuseIf(
                !places.all().containsKey(named),
                Reason.UNKNOWN_PLACE,
                "There is no place “" + named + "”; add it, or name one of "
                        + String.join(", ", places.all().keySet()) + ".");
        return named;
    }

    /** What lies in a place, after netting. */
    TreeMap<LotKey, Long> in(String item, String place, Dimension dimension) {
        TreeMap<LotKey, Long> lots = new TreeMap<>(Netting.of(journal.amounts(item)));
        lots.keySet().removeIf(lot -> !lot.place().equals(place) || lot.dimension() != dimension);
        return lots;
    }

    static void refuseIf(boolean refused, Reason reason, String why) {
        if (refused) {
            throw new RefusedException(reason, why);
        }
    }
}
