package etamine.catalogue.internal;

import etamine.base.Problem;
import etamine.kitchen.check.BookCheck;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Checks suppliers and offers. */
@Component
public final class CatalogueCheck implements BookCheck {
    private final Shelves shelves;
    private final LiveCatalogue catalogue;

    /** Checks what the catalogue shows. */
    @Activate
    public CatalogueCheck(@Reference Shelves shelves, @Reference LiveCatalogue catalogue) {
        this.shelves = shelves;
        this.catalogue = catalogue;
    }

    @Override
    public List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        shelves.unreadable()
                .forEach((where, reason) -> problems.add(Problem.error(
                        "unreadable", where, "This entry cannot be read (" + reason + "); write it again.")));
        catalogue.suppliers().values().stream()
                .filter(supplier -> supplier.deliveryDays().isEmpty())
                .forEach(supplier -> problems.add(Problem.note(
                        "no-delivery-days",
                        Shelves.SUPPLIERS + "/" + supplier.id(),
                        supplier.name() + " has no delivery days, so nothing can be planned with it; set them.")));
        shelves.offers().values().forEach(offer -> problems.addAll(OfferDoubts.of(offer, catalogue)));
        return problems;
    }
}
