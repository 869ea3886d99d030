package etamine.inventory.internal;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.inventory.Incoming;
import etamine.inventory.RefusedException;
import etamine.inventory.Stockroom;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.UnitPrice;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code transfer}: what came from elsewhere in the house or went there. */
@Component
public final class TransferVerb implements Verb {
    private static final String IN = "in";
    private static final String OUT = "out";

    private final Stockroom stockroom;
    private final KnownItems items;

    /** Transfers to and from that stockroom. */
    @Activate
    public TransferVerb(@Reference Stockroom stockroom, @Reference KnownItems items) {
        this.stockroom = stockroom;
        this.items = items;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of(
                        "transfer",
                        "What came from elsewhere in the house (in) or went there (out).",
                        "in|out",
                        "ITEM",
                        "QUANTITY")
                .with("--place", "PLACE", "in: where it goes; out: from where")
                .with("--reason", "TEXT", "from where it comes, or why it goes")
                .with("--paid", "AMOUNT", "in: what all of it cost; without it, it comes at the average")
                .with("--use-by", "DATE", "in: its last day as marked");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        List<String> given = call.arguments();
        String way = given.isEmpty() ? "" : given.get(0);
        if (way.equalsIgnoreCase(OUT)) {
            return new TakeCall(stockroom, items).take(MovementKind.SENT, call, given.subList(1, given.size()));
        }
        if (!way.equalsIgnoreCase(IN) || given.size() < 3) {
            throw VerbException.wrongCall(
                    "Write in or out, the item and the quantity, such as: transfer out lemon \"6 ea\".");
        }
        try {
            String quantity = String.join(" ", given.subList(2, given.size()));
            return bring(call, given.get(1), QuantityText.parse(quantity));
        } catch (RefusedException | MeasureException refused) {
            throw VerbException.rejected(refused.getMessage());
        }
    }

    private Report bring(VerbCall call, String item, Quantity quantity) throws VerbException {
        Optional<UnitPrice> cost = call.option("--paid").map(paid -> UnitPrice.of(paid, quantity.toString()));
        Optional<LocalDate> useBy = Optional.empty();
        if (call.option("--use-by").isPresent()) {
            useBy = Optional.of(day(call.option("--use-by").get()));
        }
        Incoming line = new Incoming(item, call.option("--place").orElse(""), quantity, useBy, cost, "");
        return MovementReport.of(stockroom.bring(call.option("--reason").orElse(""), List.of(line)), items, List.of());
    }

    private static LocalDate day(String text) throws VerbException {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException unreadable) {
            throw VerbException.wrongCall("“" + text + "” is not a day; write one such as 2026-11-24.");
        }
    }
}
