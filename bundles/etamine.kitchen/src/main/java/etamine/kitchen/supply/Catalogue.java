package etamine.kitchen.supply;

import etamine.measures.Money;
import etamine.measures.Quantity;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** Who sells what, for how much, and when it can come. Thread-safe; collections are immutable snapshots. */
@ProviderType
public interface Catalogue {

    /** All suppliers by id. */
    Map<String, Supplier> suppliers();

    /** All offers that hold on that day, one per supplier and article number. */
    List<Offer> offers(LocalDate on);

    /** The offers of an item that hold on that day, cheapest per unit first where they compare. */
    List<Offer> offersFor(String item, LocalDate on);

    /**
     * How much of the item one pack of an offer holds, in the item's count dimension; empty when an equivalence is
     * missing.
     */
    Optional<Quantity> content(Offer offer);

    /** What one pack costs when that many are ordered; a pack sold by weight is reckoned by its stated content. */
    Optional<Money> packPrice(Offer offer, long packs);

    /** Deliveries of a supplier whose cut-off lies after {@code now}, up to and including {@code until}. */
    List<Delivery> deliveries(String supplier, ZonedDateTime now, LocalDate until);
}
