package etamine.recipes.internal.revision;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Difference;
import etamine.recipes.Revision;
import etamine.recipes.Revisions;
import etamine.recipes.internal.form.RecipeForm;
import etamine.recipes.internal.text.ChangeReport;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** What a recipe was before: {@code revisions ID [--between A,B] [--restore N]}. */
@Component
public final class RevisionsVerb implements Verb {
    private final Revisions revisions;

    /** Lists and compares those. */
    @Activate
    public RevisionsVerb(@Reference Revisions revisions) {
        this.revisions = revisions;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("revisions", "what a recipe was before, what differs, and how to bring it back", "ID")
                .with(
                        "--between",
                        "A,B",
                        "what differs between two revisions; one number alone compares with the newest")
                .with("--restore", "N", "write a former revision again as the newest");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().size() != 1) {
            throw VerbException.wrongCall("Name one recipe: revisions ID.");
        }
        String id = call.arguments().get(0);
        List<Revision> all = revisions.of(id);
        if (all.isEmpty()) {
            throw VerbException.wrongCall("There never was a recipe “" + id + "”; the verb recipes lists them all.");
        }
        if (call.has("--restore")) {
            long number = number(call.option("--restore").orElseThrow());
            return ChangeReport.of(
                    revisions.restore(id, number), "Brought back revision " + number + " of " + id + ".");
        }
        return call.has("--between") ? between(all, call.option("--between").orElseThrow()) : list(all);
    }

    private static Report list(List<Revision> all) {
        TextTable table = new TextTable(">no.", "written", "what was done", "");
        List<Map<String, Object>> json = new ArrayList<>();
        for (Revision revision : all) {
            String state = revision.removed() ? "removed" : revision.recipe().isEmpty() ? "unreadable" : "";
            table.row(
                    Long.toString(revision.number()),
                    revision.at().truncatedTo(ChronoUnit.SECONDS).toString(),
                    revision.label(),
                    state);
            Map<String, Object> line = new LinkedHashMap<>();
            line.put("number", revision.number());
            line.put("at", revision.at().toString());
            line.put("label", revision.label());
            line.put("removed", revision.removed());
            json.add(line);
        }
        return Report.done(Map.of("revisions", json), table.lines());
    }

    private Report between(List<Revision> all, String text) throws VerbException {
        String[] parts = text.strip().split("[,\\s]+");
        if (parts.length > 2) {
            throw VerbException.wrongCall("Name two revisions, such as --between 1,3.");
        }
        Recipe older = recipe(all, number(parts[0]));
        Recipe newer =
                recipe(all, parts.length == 2 ? number(parts[1]) : all.get(0).number());
        List<Difference> differences = revisions.between(older, newer);
        List<String> lines = new ArrayList<>();
        differences.forEach(difference -> lines.addAll(lines(difference)));
        return Report.done(
                Map.of(
                        "differences",
                        differences.stream().map(RevisionsVerb::json).toList()),
                lines.isEmpty() ? List.of("Nothing differs.") : lines);
    }

    private static Recipe recipe(List<Revision> all, long number) throws VerbException {
        return all.stream()
                .filter(revision -> revision.number() == number)
                .flatMap(revision -> revision.recipe().stream())
                .findFirst()
                .orElseThrow(() -> VerbException.wrongCall(
                        "There is no revision " + number + " that can be read; revisions ID lists them."));
    }

    private static List<String> lines(Difference difference) {
        String what = RecipeForm.word(difference.what());
        List<String> lines = new ArrayList<>();
        if (difference.what() == Difference.What.TEXT) {
            StringBuilder marked = new StringBuilder();
            difference.words().forEach(words -> marked.append(marked(words)));
            lines.add(difference.where() + ", " + what + ": " + marked);
            return lines;
        }
        lines.add(difference.where() + ", " + what);
        if (!difference.before().isEmpty() && difference.what() != Difference.What.MOVED) {
            lines.add("  - " + difference.before());
        }
        if (!difference.after().isEmpty()) {
            lines.add("  + " + difference.after());
        }
        return lines;
    }

    private static String marked(Difference.Words words) {
        return switch (words.kind()) {
            case SAME -> words.text();
            case REMOVED -> "[-" + words.text() + "-]";
            case ADDED -> "{+" + words.text() + "+}";
        };
    }

    private static Map<String, Object> json(Difference difference) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("what", RecipeForm.word(difference.what()));
        json.put("where", difference.where());
        json.put("before", difference.before());
        json.put("after", difference.after());
        return json;
    }

    private static long number(String text) throws VerbException {
        if (!text.strip().matches("[0-9]{1,9}")) {
            throw VerbException.wrongCall("Name a revision by its number; revisions ID lists them.");
        }
        return Long.parseLong(text.strip());
    }
}
