package etamine.inventory.ui.internal;

import etamine.inventory.Stockroom;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.kitchen.order.Orders;
import etamine.kitchen.stock.Stock;
import etamine.shell.Bench;
import etamine.shell.Frame;
import etamine.shell.Station;
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

/** Where stock is looked at, counted, received and written off. */
@Component
public final class StockStation implements Station {
    private static final int ORDER = 500;

    private final Stockroom room;
    private final Stock stock;
    private final Kitchen kitchen;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Items items;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Orders orders;

    /** The station of the open book. */
    @Activate
    public StockStation(@Reference Stockroom room, @Reference Stock stock, @Reference Kitchen kitchen) {
        this.room = room;
        this.stock = stock;
        this.kitchen = kitchen;
    }

    @Override
    public String id() {
        return "stock";
    }

    @Override
    public String name() {
        return "Stock";
    }

    @Override
    public String icon() {
        return "stock";
    }

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public Set<String> shows() {
        return Set.of("stock", "place");
    }

    @Override
    public Bench open(Composite parent, Frame frame) {
        StockModel model = new StockModel(room, stock, kitchen, () -> Optional.ofNullable(items));
        return new StockBench(parent, frame, model, new OrderModel(model, () -> Optional.ofNullable(orders)));
    }
}
