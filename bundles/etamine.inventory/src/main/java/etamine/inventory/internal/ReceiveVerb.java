package etamine.inventory.internal;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.inventory.RefusedException;
import etamine.inventory.Stockroom;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code receive}: takes an order in, whole unless packs are said to be short. */
@Component
public final class ReceiveVerb implements Verb {
    private final Stockroom stockroom;
    private final KnownItems items;

    /** Receives into that stockroom. */
    @Activate
    public ReceiveVerb(@Reference Stockroom stockroom, @Reference KnownItems items) {
        this.stockroom = stockroom;
        this.items = items;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("receive", "Receive an order as it was sent.", "ORDER", "[ITEM=PACKS...]")
                .with("--short", "ITEM=PACKS", "packs that did not come; more may follow, parted by commas or blanks")
                .with("--place", "PLACE", "where everything goes; without it, where each item usually is");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().isEmpty()) {
            throw VerbException.wrongCall("Name the order; the verb order lists them.");
        }
        try {
            return MovementReport.of(
                    stockroom.receiveOrder(call.arguments().get(0), shortPacks(call), call.option("--place")),
                    items,
                    List.of());
        } catch (RefusedException refused) {
            throw VerbException.rejected(refused.getMessage());
        }
    }

    private static Map<String, Long> shortPacks(VerbCall call) throws VerbException {
        List<String> written = Stream.concat(
                        call.option("--short").stream(),
                        call.arguments().stream().skip(1))
                .flatMap(text -> Stream.of(text.split("[,\\s]+")))
                .filter(text -> !text.isEmpty())
                .toList();
        Map<String, Long> packs = new LinkedHashMap<>();
        for (String text : written) {
            if (!text.matches("[^=]+=[0-9]{1,9}")) {
                throw VerbException.wrongCall("Write short packs as ITEM=PACKS, such as cream=1, not “" + text + "”.");
            }
            int sign = text.indexOf('=');
            packs.put(text.substring(0, sign), Long.parseLong(text.substring(sign + 1)));
        }
        return packs;
    }
}
