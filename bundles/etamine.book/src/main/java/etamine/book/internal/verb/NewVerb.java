package etamine.book.internal.verb;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.book.internal.FreshBook;
import etamine.kitchen.house.Kitchen;
import etamine.storage.BookSession;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** {@code new}: an empty book with the house's settings. */
@Component
public final class NewVerb implements Verb {
    private final BookSession session;

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<Kitchen> kitchens = List.of();

    /** Makes books in that session. */
    @Activate
    public NewVerb(@Reference BookSession session) {
        this.session = session;
    }

    @Override
    public VerbUsage usage() {
        return Settings.options(VerbUsage.of("new", "Make an empty book").withoutBook());
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        Settings settings = Settings.of(call);
        FreshBook fresh = FreshBook.make(session, call.location());
        try {
            return filled(fresh, settings);
        } catch (RuntimeException e) {
            fresh.withdraw();
            throw e;
        }
    }

    private Report filled(FreshBook fresh, Settings settings) {
        Kitchen kitchen = kitchens.get(0);
        kitchen.change(settings.over(kitchen.house()));
        return Report.done(
                Settings.json(fresh.book().location(), kitchen.house()),
                Settings.lines("Made the empty book " + fresh.book().location() + ".", kitchen.house()));
    }
}
