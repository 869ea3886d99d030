package etamine.recipes.internal.scale;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.recipes.Scaled;
import etamine.recipes.Scaling;
import etamine.recipes.UseLines;
import etamine.recipes.Vessels;
import etamine.recipes.internal.text.CardText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Scales a recipe on the console: {@code scale ID --to QUANTITY | --covers N | --vessels SIZES | --have LIST}. */
@Component
public final class ScaleVerb implements Verb {
    private static final List<String> WAYS = List.of("--to", "--covers", "--vessels", "--have");

    private final Scaling scaling;
    private final Vessels vessels;
    private final UseLines lines;
    private final CardText cards;

    /** Scales with that. */
    @Activate
    public ScaleVerb(
            @Reference Scaling scaling,
            @Reference Vessels vessels,
            @Reference UseLines lines,
            @Reference CardText cards) {
        this.scaling = scaling;
        this.vessels = vessels;
        this.lines = lines;
        this.cards = cards;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("scale", "a recipe for an amount, for covers, for vessels or from what is there", "ID")
                .with("--to", "QUANTITY", "how much to make, such as \"3 l\" or \"12 portion\"")
                .with("--covers", "N", "for how many covers, a portion each")
                .with(
                        "--vessels",
                        "SIZES",
                        "such as \"12 x 130 ml\", \"2 x GN 1/1 65 mm, 80 %\", \"3 x round 20 cm x 5 cm\"")
                .with("--have", "LIST", "what is on hand, such as \"celeriac=2.4 kg,cream=1 l\"");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        List<String> ways = WAYS.stream().filter(call::has).toList();
        if (call.arguments().size() != 1 || ways.size() != 1) {
            throw VerbException.wrongCall(
                    "Name one recipe and one way: scale ID --to QUANTITY, --covers N, --vessels SIZES or --have LIST.");
        }
        Scaled scaled = scaled(
                call.arguments().get(0), ways.get(0), call.option(ways.get(0)).orElseThrow());
        if (scaled instanceof Scaled.Batch batch) {
            ScaledText text = new ScaledText(batch, cards);
            return Report.done(text.json(), text.lines());
        }
        throw VerbException.wrongCall(((Scaled.Impossible) scaled).text());
    }

    private Scaled scaled(String id, String way, String value) throws VerbException {
        try {
            return switch (way) {
                case "--to" -> scaling.to(id, QuantityText.parse(value));
                case "--covers" -> scaling.forCovers(id, Ratio.parse(value));
                case "--vessels" -> scaling.forVessels(id, vessels.read(value));
                default -> scaling.fromOnHand(id, onHand(value));
            };
        } catch (MeasureException unreadable) {
            throw VerbException.wrongCall(unreadable.getMessage());
        }
    }

    /** A comma begins a new thing only when a name and a sign of equality follow, since amounts may have commas too. */
    private Map<String, Quantity> onHand(String text) {
        Map<String, Quantity> have = new LinkedHashMap<>();
        for (String part : text.split("[,;](?=[^,;=]+=)")) {
            int sign = part.indexOf('=');
            if (sign < 0) {
                throw new MeasureException("Write what is on hand as item=amount, such as celeriac=2.4 kg,cream=1 l.");
            }
            String line = part.substring(sign + 1).strip() + " "
                    + part.substring(0, sign).strip();
            if (lines.read(line) instanceof UseLines.Reading.Clear clear) {
                have.merge(clear.use().item(), clear.use().quantity(), Quantity::plus);
            } else {
                throw new MeasureException(
                        "“" + part.strip() + "”: " + ((UseLines.Reading.Unclear) lines.read(line)).text());
            }
        }
        return have;
    }
}
