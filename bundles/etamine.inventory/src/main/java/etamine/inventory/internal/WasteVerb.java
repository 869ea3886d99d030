package etamine.inventory.internal;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.inventory.Outgoing;
import etamine.inventory.RefusedException;
import etamine.inventory.Stockroom;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.MeasureException;
import etamine.measures.QuantityText;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code waste}: writes off what was thrown away. */
@Component
public final class WasteVerb implements Verb {
    private final Stockroom stockroom;
    private final KnownItems items;

    /** Takes from that stockroom. */
    @Activate
    public WasteVerb(@Reference Stockroom stockroom, @Reference KnownItems items) {
        this.stockroom = stockroom;
        this.items = items;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("waste", "Write off what was thrown away.", "ITEM", "QUANTITY")
                .with("--place", "PLACE", "from where; without it, from the lots that expire first")
                .with("--reason", "TEXT", "why");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().size() < 2) {
            throw VerbException.wrongCall("Write the item and the quantity, such as: waste cream \"0.5 l\".");
        }
        String quantity =
                String.join(" ", call.arguments().subList(1, call.arguments().size()));
        try {
            Outgoing waste = new Outgoing(
                    call.arguments().get(0),
                    QuantityText.parse(quantity),
                    call.option("--place"),
                    call.option("--reason").orElse(""));
            return MovementReport.of(stockroom.take(MovementKind.WASTED, waste), items, List.of());
        } catch (RefusedException | MeasureException refused) {
            throw VerbException.rejected(refused.getMessage());
        }
    }
}
