package etamine.recipes.internal;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.measures.MeasureException;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.recipes.Scaled;
import etamine.recipes.Scaling;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Scales a recipe on the console: {@code scale ID --to QUANTITY | --covers N}. */
@Component
public final class ScaleVerb implements Verb {
    private final Scaling scaling;
    private final CardText cards;

    /** Scales with that. */
    @Activate
    public ScaleVerb(@Reference Scaling scaling, @Reference CardText cards) {
        this.scaling = scaling;
        this.cards = cards;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("scale", "a recipe for an amount or for covers", "ID")
                .with("--to", "QUANTITY", "how much to make, such as \"3 l\" or \"12 portion\"")
                .with("--covers", "N", "for how many covers, a portion each")
                .with("--vessels", "SIZES", "for moulds and pans; comes with a later version");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().size() != 1) {
            throw VerbException.wrongCall("Name one recipe: scale ID --to QUANTITY, or scale ID --covers N.");
        }
        if (call.has("--vessels")) {
            throw VerbException.wrongCall(
                    "Scaling to moulds and pans comes with a later version; use --to or --covers.");
        }
        if (call.has("--to") == call.has("--covers")) {
            throw VerbException.wrongCall("Say either --to QUANTITY or --covers N.");
        }
        Scaled scaled = scaled(call, call.arguments().get(0));
        if (scaled instanceof Scaled.Batch batch) {
            return report(batch);
        }
        throw VerbException.wrongCall(((Scaled.Impossible) scaled).text());
    }

    private Scaled scaled(VerbCall call, String id) throws VerbException {
        try {
            return call.has("--to")
                    ? scaling.to(id, QuantityText.parse(call.option("--to").orElseThrow()))
                    : scaling.forCovers(id, Ratio.parse(call.option("--covers").orElseThrow()));
        } catch (MeasureException unreadable) {
            throw VerbException.wrongCall(unreadable.getMessage());
        }
    }

    private Report report(Scaled.Batch batch) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", batch.recipe().id());
        json.put("factor", batch.factor().toString());
        json.putAll(CardText.json(batch.recipe()));
        json.put("batches", batch.batches());
        json.put("remarks", batch.remarks());
        List<String> lines = new ArrayList<>();
        String factor = batch.factor()
                .toDecimal(5, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        lines.add(batch.recipe().name() + ", multiplied by " + factor + "; " + batch.batches()
                + (batch.batches() == 1 ? " batch" : " batches") + " if made whole");
        lines.add("");
        lines.addAll(cards.amounts(batch.recipe()));
        batch.remarks().forEach(lines::add);
        return Report.done(json, lines);
    }
}
