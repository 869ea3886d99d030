package etamine.ingredients.internal;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.ingredients.Ingredient;
import etamine.ingredients.StarterSet;
import etamine.kitchen.item.Allergens;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Puts common ingredients into the book: {@code starter}. */
@Component
public final class StarterVerb implements Verb {
    private final StarterSet starters;

    /** Adds from that set. */
    @Activate
    public StarterVerb(@Reference StarterSet starters) {
        this.starters = starters;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("starter", "add common ingredients that the book does not have yet");
    }

    @Override
    public Report run(VerbCall call) {
        List<String> ids = starters.missing().stream().map(Ingredient::id).toList();
        int added = starters.add();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("added", added);
        json.put("ingredients", ids);
        return Report.done(
                json,
                List.of(
                        added == 0
                                ? "The book has all of them already."
                                : added + " common ingredients added, each with where its figures come from.",
                        "Yields and weights differ from house to house: weigh your own.",
                        Allergens.CAUTION));
    }
}
