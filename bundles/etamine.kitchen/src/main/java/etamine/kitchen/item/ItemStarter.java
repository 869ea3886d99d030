package etamine.kitchen.item;

import etamine.measures.Equivalence;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Adds items and preparations that somebody names while writing something else; offered where there is an ingredient
 * list. Each call is one undoable change. Thread-safe; it throws {@link etamine.storage.BookException} when the medium
 * fails, and {@link etamine.measures.MeasureException} with a sentence when what is wanted cannot be.
 */
@ProviderType
public interface ItemStarter {

    /**
     * Adds an item under an identifier made from its name, whatever its own identifier says.
     *
     * @return the identifier it has now
     */
    String start(Item wanted);

    /** Adds a preparation to a listed item, in place of one of the same name. */
    void prepare(String item, Preparation preparation);

    /** Adds a measure to a listed item as it is, such as what a sprig of it weighs. */
    void measure(String item, Equivalence measure);
}
