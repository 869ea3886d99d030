package etamine.catalogue;

import etamine.base.Explanation;
import etamine.base.Problem;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import etamine.measures.UnitPrice;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Suppliers and offers as somebody edits them. Thread-safe; each change is one transaction that can be undone, and
 * throws {@link RefusedException} when it cannot be accepted.
 */
@ProviderType
public interface SupplierBook {

    /** All suppliers by id. */
    Map<String, Supplier> suppliers();

    /** All offers by their id, those that do not hold yet included. */
    Map<String, Offer> offers();

    /** The ids of the offers whose price holds today; the others are former prices, or prices to come. */
    Set<String> current();

    /**
     * The id an offer is kept under: supplier and article number, or supplier and item where it has no number, and the
     * first day of its price.
     */
    String idOf(Offer offer);

    /** The next delivery of a supplier that can still be ordered, within four weeks from now. */
    Optional<Delivery> next(String supplier);

    /** What one unit an offer's item is counted in costs, for a single pack; empty when it cannot be reckoned. */
    Optional<UnitPrice> unitPrice(Offer offer);

    /** How an offer's price comes about: pack, content, price per unit and breaks. */
    Explanation explain(Offer offer);

    /** What is doubtful about an offer. */
    List<Problem> problems(Offer offer);

    /** The revision to save a supplier against; 0 when there is none of that id. */
    long supplierRevision(String id);

    /** The revision to save an offer against; 0 when there is none of that id. */
    long offerRevision(String id);

    /**
     * Saves a supplier, new or changed.
     *
     * @param expected the revision it was read at; 0 for a new one
     * @throws etamine.storage.BookException with reason STALE if somebody has changed it since
     */
    void save(Supplier supplier, long expected);

    /**
     * Saves an offer, new or changed.
     *
     * @param formerId what it was kept under before; empty when it is new
     * @param expected the revision it was read at under that id; 0 for a new one
     * @throws etamine.storage.BookException with reason STALE if somebody has changed it since
     */
    void save(Offer offer, String formerId, long expected);

    /** Removes a supplier together with its offers. */
    void removeSupplier(String id);

    /** Removes an offer. */
    void removeOffer(String id);
}
