package etamine.book.internal.exchange;

import etamine.kitchen.exchange.ExchangeSection;
import etamine.storage.Book;
import java.util.List;

/** Makes exchanges for tests of other packages. */
public final class Exchanges {
    private Exchanges() {}

    /** The exchange of that book with these sections. */
    public static BookExchange of(Book book, ExchangeSection... sections) {
        return new BookExchange(book, List.of(sections));
    }
}
