package etamine.ingredients;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** Common ingredients to begin with: yields and household measures with their sources. Thread-safe. */
@ProviderType
public interface StarterSet {

    /** All of them, as they come. */
    List<Ingredient> all();

    /** Those that the book has neither by identifier nor by name. */
    List<Ingredient> missing();

    /** Puts the missing ones into the book in one transaction that undo takes back; answers how many. */
    int add();
}
