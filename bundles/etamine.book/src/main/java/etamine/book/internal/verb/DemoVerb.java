package etamine.book.internal.verb;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.book.internal.FreshBook;
import etamine.kitchen.house.DemoKitchen;
import etamine.storage.BookSession;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code demo}: a new book with the demo kitchen in it. */
@Component
public final class DemoVerb implements Verb {
    private final BookSession session;
    private final DemoKitchen demo;

    /** Makes the book in that session. */
    @Activate
    public DemoVerb(@Reference BookSession session, @Reference DemoKitchen demo) {
        this.session = session;
        this.demo = demo;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("demo", "Make a book with the invented demo kitchen in it")
                .withoutBook();
    }

    @Override
    public Report run(VerbCall call) {
        FreshBook fresh = FreshBook.make(session, call.location());
        try {
            demo.into(fresh.book());
        } catch (RuntimeException e) {
            fresh.withdraw();
            throw e;
        }
        String location = fresh.book().location();
        return Report.done(
                Map.of("book", location),
                List.of("Made " + location + " with the demo kitchen; all of it is invented."));
    }
}
