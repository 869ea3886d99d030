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

/** {@code resell}: writes down what was sold as it is, such as fat to a renderer. */
@Component
public final class ResellVerb implements Verb {
    private final TakeCall taking;

    /** Takes from that stockroom. */
    @Activate
    public ResellVerb(@Reference Stockroom stockroom, @Reference KnownItems items) {
        this.taking = new TakeCall(stockroom, items);
    }

    @Override
    public VerbUsage usage() {
        return TakeCall.usage("resell", "Write down what was sold as it is, not on a plate.");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        return taking.take(MovementKind.RESOLD, call, call.arguments());
    }
}
