package etamine.ingredients.internal;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.ingredients.IngredientMerges;
import etamine.ingredients.IngredientMerges.Likeness;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists ingredients that may be there twice: {@code duplicates}. */
@Component
public final class DuplicatesVerb implements Verb {
    private final IngredientMerges merges;

    /** Lists what those merges find. */
    @Activate
    public DuplicatesVerb(@Reference IngredientMerges merges) {
        this.merges = merges;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("duplicates", "list ingredients that may be there twice");
    }

    @Override
    public Report run(VerbCall call) {
        List<Map<String, Object>> json = new ArrayList<>();
        TextTable table = new TextTable("keep", "name", "merge into it", "name", "because");
        for (Likeness likeness : merges.duplicates()) {
            Map<String, Object> pair = new LinkedHashMap<>();
            pair.put("keep", likeness.one().id());
            pair.put("merge", likeness.other().id());
            pair.put("why", likeness.why());
            json.add(pair);
            table.row(
                    likeness.one().id(),
                    likeness.one().item().name(),
                    likeness.other().id(),
                    likeness.other().item().name(),
                    likeness.why());
        }
        List<String> lines = new ArrayList<>(table.lines());
        lines.add(
                json.isEmpty()
                        ? "No two ingredients look the same."
                        : "To make two of them one: merge FROM INTO, or look first with merge FROM INTO --preview.");
        return Report.done(Map.of("duplicates", json), lines);
    }
}
