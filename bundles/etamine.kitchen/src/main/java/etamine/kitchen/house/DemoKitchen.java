package etamine.kitchen.house;

import etamine.storage.Book;
import org.osgi.annotation.versioning.ProviderType;

/** The invented kitchen that shows what the program does. */
@ProviderType
public interface DemoKitchen {

    /**
     * Loads the demo kitchen into an open, empty book; takes seconds, so call it in the background.
     *
     * @throws etamine.storage.BookException if the book is not empty or cannot be written; it is then as before
     */
    void into(Book book);
}
