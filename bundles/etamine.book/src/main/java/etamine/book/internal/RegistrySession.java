package etamine.book.internal;

import etamine.book.internal.exchange.Adoption;
import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookSession;
import etamine.storage.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Dictionary;
import java.util.Hashtable;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceRegistration;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/**
 * Keeps the open book in the service registry, where everything that needs it finds it. When {@link #open} returns, all
 * that depends on the book has come, because the registry tells them on the same thread.
 */
@Component
public final class RegistrySession implements BookSession {
    private final BundleContext context;
    private volatile Optional<Opened> opened = Optional.empty();

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<Books> shops = List.of();

    /** Takes over what earlier programs put by, once the book is there. */
    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<Adoption> adoptions = List.of();

    private record Opened(Book book, ServiceRegistration<Book> registration) {}

    /** A session without a book. */
    @Activate
    public RegistrySession(BundleContext context) {
        this.context = context;
    }

    RegistrySession(BundleContext context, Books shop, Adoption adoption) {
        this(context);
        this.shops = List.of(shop);
        this.adoptions = List.of(adoption);
    }

    @Override
    public synchronized Book open(String location) {
        return present(location, shop -> shop.open(location));
    }

    @Override
    public synchronized Book create(String location) {
        return present(location, shop -> {
            makeFolder(location);
            return shop.create(location);
        });
    }

    @Override
    @Deactivate
    public synchronized void close() {
        Optional<Opened> closing = opened;
        opened = Optional.empty();
        closing.ifPresent(it -> {
            unregister(it.registration());
            it.book().close();
        });
    }

    @Override
    public Optional<Book> current() {
        return opened.map(Opened::book);
    }

    private Book present(String location, Function<Books, Book> opening) {
        Books shop = shops.stream()
                .filter(each -> each.accepts(location))
                .findFirst()
                .orElseThrow(() -> new BookException(
                        BookException.Reason.OTHER,
                        "No installed part of the program can keep a book at " + location + "; name a file instead."));
        close();
        Book book = sound(opening.apply(shop));
        Dictionary<String, Object> properties = new Hashtable<>();
        properties.put("location", book.location());
        opened = Optional.of(new Opened(book, context.registerService(Book.class, book, properties)));
        adoptions.forEach(Adoption::settle);
        return book;
    }

    /** Looks at the whole medium first (some 6 ms for each megabyte), or every module would stumble over the damage. */
    private static Book sound(Book book) {
        try {
            Optional<String> damage = book.integrity();
            if (damage.isEmpty()) {
                return book;
            }
            throw new BookException(
                    BookException.Reason.DAMAGED,
                    book.location() + " is damaged (" + inBrief(damage.get())
                            + "). Put it aside and restore the last backup.");
        } catch (BookException e) {
            book.close();
            throw e;
        }
    }

    /** The first of what may be hundreds of torn pages, for people; the others would say the same. */
    private static String inBrief(String damage) {
        List<String> lines =
                damage.lines().filter(line -> !line.startsWith("***")).toList();
        return lines.isEmpty()
                ? damage
                : lines.get(0) + (lines.size() > 1 ? " and " + (lines.size() - 1) + " more" : "");
    }

    private static void makeFolder(String location) {
        if (location.startsWith("jdbc:")) {
            return;
        }
        Path folder = Path.of(location).toAbsolutePath().getParent();
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new BookException(
                    BookException.Reason.NO_ROOM,
                    "The folder " + folder + " cannot be made (" + e.getMessage() + "); name a place you may write to.",
                    e);
        }
    }

    private static void unregister(ServiceRegistration<Book> registration) {
        try {
            registration.unregister();
        } catch (IllegalStateException alreadyGone) {
            // the framework stops and has taken it away itself
        }
    }
}
