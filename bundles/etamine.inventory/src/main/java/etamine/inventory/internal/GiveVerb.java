package etamine.inventory.internal;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.inventory.Stockroom;
import etamine.kitchen.stock.MovementKind;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code give}: writes down what was given away: promotions, tastings, on the house. */
@Component
public final class GiveVerb implements Verb {
    private final TakeCall taking;

    /** Takes from that stockroom. */
    @Activate
    public GiveVerb(@Reference Stockroom stockroom, @Reference KnownItems items) {
        this.taking = new TakeCall(stockroom, items);
    }

    @Override
    public VerbUsage usage() {
        return TakeCall.usage("give", "Write down what guests were given without charge.");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        return taking.take(MovementKind.GIVEN, call, call.arguments());
    }
}
