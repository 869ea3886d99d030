package etamine.kitchen.house;

import etamine.base.Progress;
import org.osgi.annotation.versioning.ProviderType;

/** The demonstration kitchen that comes with the program; everything in it is invented. There while a book is open. */
@ProviderType
public interface DemoKitchen {

    /**
     * Loads it into the open book, its dates moved by whole weeks so that its today falls in the present week.
     *
     * @throws etamine.storage.BookException if the program comes without it or the book does not accept it; the message
     *     says which
     */
    void fill(Progress progress);
}
