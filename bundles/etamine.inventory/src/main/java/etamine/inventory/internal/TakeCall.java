package etamine.inventory.internal;

import etamine.base.verb.Report;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.inventory.Movement;
import etamine.inventory.Outgoing;
import etamine.inventory.RefusedException;
import etamine.inventory.Stockroom;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.MeasureException;
import etamine.measures.QuantityText;
import java.util.List;

/**
 * What the verbs that take something out have in common.
 *
 * @param stockroom from where
 * @param items what is known of items
 */
record TakeCall(Stockroom stockroom, KnownItems items) {

    static VerbUsage usage(String verb, String summary) {
        return VerbUsage.of(verb, summary, "ITEM", "QUANTITY")
                .with("--place", "PLACE", "from where; without it, from the lots that expire first")
                .with("--reason", "TEXT", "why");
    }

    /** Takes out what the arguments say, by a door; there is something to look at when it was more than was there. */
    Report take(MovementKind door, VerbCall call, List<String> arguments) throws VerbException {
        if (arguments.size() < 2) {
            throw VerbException.wrongCall("Write the item and the quantity, such as: cream \"0.5 l\".");
        }
        String quantity = String.join(" ", arguments.subList(1, arguments.size()));
        try {
            Outgoing what = new Outgoing(
                    arguments.get(0),
                    QuantityText.parse(quantity),
                    call.option("--place"),
                    call.option("--reason").orElse(""));
            List<Movement> movements = stockroom.take(door, what);
            return MovementReport.look(movements, items, List.of(), MovementReport.owing(movements, items, stockroom));
        } catch (RefusedException | MeasureException refused) {
            throw VerbException.rejected(refused.getMessage());
        }
    }
}
