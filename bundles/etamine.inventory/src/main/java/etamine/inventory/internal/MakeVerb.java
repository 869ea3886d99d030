package etamine.inventory.internal;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.inventory.Movement;
import etamine.inventory.RefusedException;
import etamine.inventory.Stockroom;
import etamine.kitchen.house.Kitchen;
import etamine.measures.MeasureException;
import etamine.measures.Ratio;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code make}: takes what batches of a recipe use and puts what they make on the shelf. */
@Component
public final class MakeVerb implements Verb {
    private final Stockroom stockroom;
    private final KnownItems items;
    private final Kitchen kitchen;

    /** Makes in that stockroom. */
    @Activate
    public MakeVerb(@Reference Stockroom stockroom, @Reference KnownItems items, @Reference Kitchen kitchen) {
        this.stockroom = stockroom;
        this.items = items;
        this.kitchen = kitchen;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("make", "Take what batches of a recipe use and add what they make.", "ID", "N");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().size() != 2) {
            throw VerbException.wrongCall(
                    "Write the recipe and the number of batches, such as: make celeriac-puree 2.");
        }
        try {
            List<Movement> movements = stockroom.make(
                    call.arguments().get(0), Ratio.parse(call.arguments().get(1)));
            List<String> more = new ArrayList<>(MovementReport.cautions(movements, items, kitchen.today()));
            more.addAll(MovementReport.owing(movements, items, stockroom));
            return MovementReport.of(movements, items, more);
        } catch (RefusedException | MeasureException refused) {
            throw VerbException.rejected(refused.getMessage());
        }
    }
}
