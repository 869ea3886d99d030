package etamine.catalogue.ui.internal;

import etamine.catalogue.SupplierBook;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
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

/** Where suppliers and their offers are kept. */
@Component
public final class SuppliersStation implements Station {
    private static final int ORDER = 400;

    private final SupplierBook book;
    private final Kitchen kitchen;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Items items;

    /** The station of the open book. */
    @Activate
    public SuppliersStation(@Reference SupplierBook book, @Reference Kitchen kitchen) {
        this.book = book;
        this.kitchen = kitchen;
    }

    @Override
    public String id() {
        return "suppliers";
    }

    @Override
    public String name() {
        return "Suppliers";
    }

    @Override
    public String icon() {
        return "suppliers";
    }

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public Set<String> shows() {
        return Set.of("supplier", "offer");
    }

    @Override
    public Bench open(Composite parent, Frame frame) {
        return new SuppliersBench(parent, frame, new SuppliersModel(book, kitchen, () -> Optional.ofNullable(items)));
    }
}
