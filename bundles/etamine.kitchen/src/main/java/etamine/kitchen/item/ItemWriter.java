package etamine.kitchen.item;

import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import etamine.storage.Transaction;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** Writes single facts of items within somebody else's transaction, so that one change can touch several modules. */
@ProviderType
public interface ItemWriter {

    /**
     * Writes a price on an item and yields on its preparations, keeping everything else.
     *
     * @param price the new written price; empty to leave it
     * @param yields the new yields by the preparation's name
     * @throws IllegalArgumentException if there is no such item on the list or preparation, or the value makes no sense;
     *     the message says what to do
     */
    void write(Transaction transaction, String item, Optional<UnitPrice> price, Map<String, Ratio> yields);
}
