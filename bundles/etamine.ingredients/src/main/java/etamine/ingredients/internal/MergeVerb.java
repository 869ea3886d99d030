package etamine.ingredients.internal;

import etamine.base.Problem;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.ingredients.Change;
import etamine.ingredients.IngredientList;
import etamine.ingredients.IngredientMerges;
import etamine.ingredients.IngredientMerges.Preview;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.ItemMentions.Mention;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Makes two ingredients one: {@code merge FROM INTO [--preview]}. */
@Component
public final class MergeVerb implements Verb {
    private final IngredientMerges merges;
    private final IngredientList list;

    /** Merges on that list. */
    @Activate
    public MergeVerb(@Reference IngredientMerges merges, @Reference IngredientList list) {
        this.merges = merges;
        this.list = list;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("merge", "put one ingredient in the place of another everywhere", "FROM", "INTO")
                .with("--preview", "", "say what would be rewritten, and write nothing");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        String from = known(call.arguments().get(0));
        String into = known(call.arguments().get(1));
        Preview preview = merges.preview(from, into);
        refuse(preview.problems());
        if (!call.has("--preview") && merges.merge(from, into) instanceof Change.Refused refused) {
            refuse(refused.problems());
        }
        return report(preview, from, into, call.has("--preview"));
    }

    private String known(String id) throws VerbException {
        if (list.find(id).isEmpty()) {
            throw VerbException.wrongCall("There is no ingredient “" + id + "”; look for its id with items.");
        }
        return id;
    }

    private static void refuse(List<Problem> problems) throws VerbException {
        if (!problems.isEmpty()) {
            throw VerbException.rejected(problems.stream().map(Problem::text).collect(Collectors.joining(" ")));
        }
    }

    private static Report report(Preview preview, String from, String into, boolean only) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("from", from);
        json.put("into", into);
        json.put("written", !only);
        json.put("rewritten", MentionReport.json(preview.mentions()));
        json.put("remarks", preview.remarks());
        List<String> lines = new ArrayList<>();
        lines.add(only ? "A merge would rewrite:" : "Rewritten:");
        preview.mentions().stream().map(Mention::text).map(text -> "  " + text).forEach(lines::add);
        lines.add("  " + preview.mentions().size() + (preview.mentions().size() == 1 ? " place" : " places"));
        lines.addAll(preview.remarks());
        lines.add(Allergens.CAUTION);
        return Report.done(json, lines);
    }
}
