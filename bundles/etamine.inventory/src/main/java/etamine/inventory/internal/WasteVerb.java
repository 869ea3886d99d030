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

/** {@code waste}: writes off what was thrown away. */
@Component
public final class WasteVerb implements Verb {
    private final TakeCall taking;

    /** Takes from that stockroom. */
    @Activate
    public WasteVerb(@Reference Stockroom stockroom, @Reference KnownItems items) {
        this.taking = new TakeCall(stockroom, items);
    }

    @Override
    public VerbUsage usage() {
        return TakeCall.usage("waste", "Write off what was thrown away.");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        return taking.take(MovementKind.WASTED, call, call.arguments());
    }
}
