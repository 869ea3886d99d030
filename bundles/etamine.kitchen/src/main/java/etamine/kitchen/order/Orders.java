package etamine.kitchen.order;

import etamine.storage.Transaction;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** The orders in the book. Thread-safe. */
@ProviderType
public interface Orders {

    /** Every order by id, the latest delivery first. */
    List<SupplierOrder> all();

    /** The order of that id. */
    Optional<SupplierOrder> find(String id);

    /** What has been ordered and has not come yet, in the item's count dimension. */
    List<OnOrder> onOrder();

    /** Notes within a transaction that an order has come, so that it is no longer on order. */
    void received(Transaction transaction, String order);
}
