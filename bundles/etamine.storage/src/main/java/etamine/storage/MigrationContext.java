package etamine.storage;

import org.osgi.annotation.versioning.ProviderType;

/** What a migration may use; valid only while it runs. */
@ProviderType
public interface MigrationContext {

    /** The shelf as the earlier steps of the same migration left it. */
    Shelf shelf(String name);

    /** Where changes go. */
    Transaction transaction();
}
