package etamine.ordering;

import etamine.kitchen.par.Par;
import etamine.kitchen.par.Pars;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Sets pars. Thread-safe; each call is one undoable transaction, durable when it returns, and fails with
 * {@link etamine.storage.BookException} as a whole. Not to be called on the window's thread.
 */
@ProviderType
public interface ParBook extends Pars {

    /** Sets how much of an item should be there, in place of what was set before. */
    void set(Par par);

    /** Takes an item's par away. */
    void remove(String item);
}
