package etamine.book.internal;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.book.internal.exchange.Json;
import etamine.kitchen.house.House;
import etamine.kitchen.house.Kitchen;
import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.Document;
import etamine.storage.LiveShelf;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;

/** The house of the open book. Its clock stands still at the instant of {@code etamine.clock} where that is set. */
@Component(service = {Kitchen.class, BookKitchen.class})
public final class BookKitchen implements Kitchen {
    /** The framework property that stops the clock. */
    static final String CLOCK = "etamine.clock";

    private static final HouseForm FORM = new HouseForm();

    private final Book book;
    private final Optional<Instant> stopped;
    private final LiveShelf<House> shelf;

    /** The house of that book. */
    @Activate
    public BookKitchen(@Reference Book book, BundleContext context) {
        this(book, Optional.ofNullable(context.getProperty(CLOCK)).map(BookKitchen::instant));
    }

    BookKitchen(Book book, Optional<Instant> stopped) {
        this.book = book;
        this.stopped = stopped;
        this.shelf = new LiveShelf<>(book, HouseForm.KITCHEN, FORM);
    }

    @Deactivate
    void close() {
        shelf.close();
    }

    @Override
    public House house() {
        return shelf.get(HouseForm.KITCHEN).orElseGet(HouseForm::undescribed);
    }

    @Override
    public void change(House house) {
        book.write("Change the kitchen's settings", transaction -> {
            Optional<Document> present = transaction.get(HouseForm.KITCHEN, HouseForm.KITCHEN);
            ObjectNode form = present.filter(document -> !document.removed())
                    .map(document -> (ObjectNode) Json.parse(document.json()))
                    .orElseGet(JsonNodeFactory.instance::objectNode);
            long expected = present.map(Document::revision).orElse(Document.ANY);
            return transaction.save(
                    HouseForm.KITCHEN,
                    HouseForm.KITCHEN,
                    expected,
                    FORM.write(house, form).toString());
        });
    }

    @Override
    public Clock clock() {
        return stopped.map(instant -> Clock.fixed(instant, house().zone()))
                .orElseGet(() -> Clock.system(house().zone()));
    }

    /** Settings that cannot be read, with the reason. */
    Map<String, String> unreadable() {
        return shelf.unreadable();
    }

    private static Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeException e) {
            throw new BookException(
                    BookException.Reason.OTHER,
                    CLOCK + " is " + text + "; write a moment in UTC, such as 2026-11-24T09:00:00Z.",
                    e);
        }
    }
}
