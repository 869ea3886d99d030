package etamine.kitchen.recipe;

import etamine.storage.Transaction;
import org.osgi.annotation.versioning.ProviderType;

/** Writes recipes within somebody else's transaction, so that one change can touch several modules. */
@ProviderType
public interface RecipeWriter {

    /**
     * Writes a recipe over the present one, keeping what this program does not know of it.
     *
     * @throws IllegalArgumentException if the recipe makes no sense; the message says what to do
     */
    void write(Transaction transaction, Recipe recipe);
}
