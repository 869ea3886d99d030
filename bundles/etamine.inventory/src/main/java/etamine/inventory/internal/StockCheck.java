package etamine.inventory.internal;

import etamine.base.Problem;
import etamine.kitchen.check.BookCheck;
import etamine.kitchen.stock.Lot;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Checks the ledger against items and places. */
@Component
public final class StockCheck implements BookCheck {
    private final LotStock stock;
    private final KnownItems items;
    private final PlaceShelf places;

    /** Checks that stock. */
    @Activate
    public StockCheck(@Reference LotStock stock, @Reference KnownItems items, @Reference PlaceShelf places) {
        this.stock = stock;
        this.items = items;
        this.places = places;
    }

    @Override
    public List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        places.unreadable()
                .forEach((id, reason) -> problems.add(Problem.error(
                        "unreadable",
                        PlaceShelf.SHELF + "/" + id,
                        "This place cannot be read (" + reason + "); write it again.")));
        TreeSet<String> unknownPlaces = new TreeSet<>();
        stock.now().forEach((item, known) -> {
            check(item, known, problems);
            known.level().lots().stream()
                    .map(Lot::place)
                    .filter(place -> !place.isEmpty() && !places.all().containsKey(place))
                    .forEach(unknownPlaces::add);
        });
        unknownPlaces.forEach(place -> problems.add(Problem.warning(
                "unknown-place",
                PlaceShelf.SHELF + "/" + place,
                "Stock lies in “" + place + "”, which is not among the places; add it or count the stock elsewhere.")));
        return problems;
    }

    private void check(String item, ItemStock known, List<Problem> problems) {
        String where = StockJournal.LEDGER + "/" + item;
        boolean anything = !known.level().lots().isEmpty() || !known.apart().isEmpty();
        if (items.refuses(item) && anything) {
            problems.add(Problem.error(
                    "unknown-item",
                    where,
                    "There is stock of “" + item + "”, which is not among the items; add it or write the stock off."));
        }
        if (known.level().onHand().signum() < 0) {
            problems.add(Problem.warning(
                    "negative-stock", where, "More of " + items.name(item) + " went out than ever came in; count it."));
        }
        known.apart()
                .forEach(
                        lot -> problems.add(
                                Problem.error(
                                        "missing-equivalence",
                                        where,
                                        lot.quantity() + " of " + items.name(item)
                                                + " cannot be brought to what it is counted in and is left out; add the measure that is missing.")));
    }
}
