package etamine.book.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.Books;
import etamine.testing.VolatileBooks;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RegistrySessionTest {
    private final FakeContext framework = new FakeContext();
    private final AtomicInteger settled = new AtomicInteger();
    private final RegistrySession session =
            new RegistrySession(framework.context(), new VolatileBooks(Clock.systemUTC()), settled::incrementAndGet);

    @Test
    void theOpenBookIsAServiceUntilItIsClosed() {
        Book book = session.create("one");
        assertThat(framework.services).containsExactly(book);
        assertThat(session.current()).containsSame(book);
        session.close();
        assertThat(framework.services).isEmpty();
        assertThat(session.current()).isEmpty();
        session.close();
    }

    @Test
    void openingAnotherBookClosesTheFirst() {
        session.create("one");
        Book second = session.create("two");
        assertThat(framework.services).containsExactly(second);
        session.open("one");
        assertThat(session.current().map(Book::location)).contains("one");
    }

    @Test
    void keptSectionsAreSettledOnceTheBookIsThere() {
        session.create("one");
        assertThat(settled).hasValue(1);
    }

    @Test
    void aFailureLeavesNoBookOpen() {
        session.create("one");
        assertThatExceptionOfType(BookException.class)
                .isThrownBy(() -> session.open("nowhere"))
                .matches(e -> e.reason() == Reason.MISSING);
        assertThat(session.current()).isEmpty();
        assertThat(framework.services).isEmpty();
    }

    @Test
    void aDamagedBookIsClosedAgainBeforeAnybodySeesIt() {
        List<String> called = new ArrayList<>();
        Book damaged = (Book) Proxy.newProxyInstance(
                Book.class.getClassLoader(), new Class<?>[] {Book.class}, (proxy, method, arguments) -> {
                    called.add(method.getName());
                    return method.getName().equals("integrity") ? Optional.of("page 7 is torn") : "worn";
                });
        Books shop = (Books) Proxy.newProxyInstance(
                Books.class.getClassLoader(),
                new Class<?>[] {Books.class},
                (proxy, method, arguments) -> method.getName().equals("accepts") ? (Object) true : damaged);
        RegistrySession worn = new RegistrySession(framework.context(), shop, settled::incrementAndGet);
        assertThatExceptionOfType(BookException.class)
                .isThrownBy(() -> worn.open("worn"))
                .withMessage("worn is damaged (page 7 is torn). Put it aside and restore the last backup.")
                .matches(e -> e.reason() == Reason.DAMAGED);
        assertThat(called).last().isEqualTo("close");
        assertThat(framework.services).isEmpty();
    }

    @Test
    void saysWhenNothingCanKeepABookThere() {
        assertThatExceptionOfType(BookException.class)
                .isThrownBy(() -> session.open("jdbc:other:x"))
                .withMessageContaining("jdbc:other:x");
    }

    @Test
    void makesTheFolderOfANewBook(@TempDir Path folder) {
        session.create(folder.resolve("new/kitchen.etamine").toString());
        assertThat(folder.resolve("new")).isDirectory();
    }
}
