package etamine.ordering.internal;

import etamine.base.Problem;
import etamine.kitchen.check.BookCheck;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.par.Par;
import etamine.measures.Conversion;
import etamine.measures.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Finds pars that cannot be counted or bought, and what is on order but does not count. */
@Component
public final class OrderingCheck implements BookCheck {
    private final Kitchen kitchen;
    private final ShelfPars pars;
    private final ShelfOrders orders;
    private final Neighbours neighbours;

    /** Checks the open book. */
    @Activate
    public OrderingCheck(
            @Reference Kitchen kitchen,
            @Reference ShelfPars pars,
            @Reference ShelfOrders orders,
            @Reference Neighbours neighbours) {
        this.kitchen = kitchen;
        this.pars = pars;
        this.orders = orders;
        this.neighbours = neighbours;
    }

    @Override
    public List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        pars.unreadable().forEach((id, why) -> problems.add(Problem.error("unreadable", where(id), why)));
        orders.unreadable().forEach((where, why) -> problems.add(Problem.error("unreadable", where, why)));
        pars.all().values().forEach(par -> check(par, problems));
        orders.uncounted()
                .forEach(line -> problems.add(Problem.warning(
                        "uncounted-order",
                        Names.ON_ORDER + "/" + line.id(),
                        "What is on order of “" + neighbours.itemName(line.item())
                                + "” does not count, since no offer says what a pack holds; add the offer.")));
        return problems;
    }

    private void check(Par par, List<Problem> problems) {
        Optional<Item> item = neighbours.item(par.item());
        if (neighbours.items().isPresent() && item.isEmpty()) {
            problems.add(Problem.warning(
                    "unknown-item",
                    where(par.item()),
                    "A par is set for “" + par.item() + "”, which is no item; add the item or take the par away."));
            return;
        }
        levels(par)
                .map(level -> Counting.count(item, level))
                .filter(Conversion.Missing.class::isInstance)
                .findFirst()
                .ifPresent(missing -> problems.add(Problem.error(
                        "missing-equivalence",
                        where(par.item()),
                        "The par of "
                                + neighbours.itemName(par.item()) + " does not count. "
                                + ((Conversion.Missing) missing).text())));
        if (isUnobtainable(par.item())) {
            problems.add(Problem.warning(
                    "no-offer",
                    where(par.item()),
                    "A par is set for " + neighbours.itemName(par.item())
                            + ", but nobody offers it; add an offer or take the par away."));
        }
    }

    private boolean isUnobtainable(String item) {
        return !neighbours.isMade(item)
                && neighbours
                        .catalogue()
                        .filter(catalogue ->
                                catalogue.offersFor(item, kitchen.today()).isEmpty())
                        .isPresent();
    }

    private static Stream<Quantity> levels(Par par) {
        return Stream.of(
                        Stream.of(par.par()),
                        par.weekdays().values().stream(),
                        par.orderAt().stream(),
                        par.capacity().stream())
                .flatMap(levels -> levels);
    }

    private static String where(String item) {
        return Names.PARS + "/" + item;
    }
}
