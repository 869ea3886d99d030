package etamine.ordering.ui.internal;

import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.kitchen.order.Orders;
import etamine.kitchen.supply.Catalogue;
import etamine.ordering.OrderDesk;
import etamine.ordering.ParBook;
import etamine.shell.Bench;
import etamine.shell.Frame;
import etamine.shell.Station;
import etamine.storage.Book;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.widgets.Composite;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Where orders are put together and sent. */
@Component
public final class OrdersStation implements Station {
    private static final int ORDER = 700;

    private final OrderDesk desk;
    private final Orders orders;
    private final ParBook pars;
    private final Kitchen kitchen;
    private final Book book;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Items items;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Catalogue catalogue;

    /** The station of the open book. */
    @Activate
    public OrdersStation(
            @Reference OrderDesk desk,
            @Reference Orders orders,
            @Reference ParBook pars,
            @Reference Kitchen kitchen,
            @Reference Book book) {
        this.desk = desk;
        this.orders = orders;
        this.pars = pars;
        this.kitchen = kitchen;
        this.book = book;
    }

    @Override
    public String id() {
        return "ordering";
    }

    @Override
    public String name() {
        return "Orders";
    }

    @Override
    public String icon() {
        return "orders";
    }

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public Set<String> shows() {
        return Set.of("order", "plan", "par");
    }

    @Override
    public Bench open(Composite parent, Frame frame) {
        Around around = new Around(kitchen, () -> Optional.ofNullable(items), () -> Optional.ofNullable(catalogue));
        return new OrdersBench(
                parent, frame, new OrdersModel(desk, orders, around), new ParsModel(pars, around), folder());
    }

    /** The folder orders beside the book; in the home folder when the book is on a server. */
    private Path folder() {
        Path home = Path.of(System.getProperty("user.home", ""), "orders");
        try {
            return book.location().startsWith("jdbc:")
                    ? home
                    : Path.of(book.location()).toAbsolutePath().resolveSibling("orders");
        } catch (InvalidPathException noFile) {
            return home;
        }
    }
}
