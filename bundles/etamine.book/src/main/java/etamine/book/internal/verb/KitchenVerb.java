package etamine.book.internal.verb;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.house.Kitchen;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code kitchen}: shows and changes the house's settings. */
@Component
public final class KitchenVerb implements Verb {
    private final Kitchen kitchen;

    /** The settings of that kitchen. */
    @Activate
    public KitchenVerb(@Reference Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    @Override
    public VerbUsage usage() {
        return Settings.options(VerbUsage.of("kitchen", "Show the kitchen's settings, or change those given"));
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        Settings settings = Settings.of(call);
        if (settings.given()) {
            kitchen.change(settings.over(kitchen.house()));
        }
        String first = settings.given() ? "The settings are now:" : "The settings are:";
        return Report.done(Settings.json(call.location(), kitchen.house()), Settings.lines(first, kitchen.house()));
    }
}
