package etamine.recipes.internal.river;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Cards;
import etamine.recipes.River;
import etamine.recipes.RiverPapers;
import etamine.recipes.Rivers;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.form.RecipeForm;
import etamine.recipes.internal.text.CardText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** {@code river ID [--batch] [--pdf FILE]}: what flows from what was bought to a plate, and what falls away. */
@Component
public final class RiverVerb implements Verb {
    private final RecipeShelf shelf;
    private final Rivers rivers;
    private final CardText texts;

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<RiverPapers> papers = List.of();

    /** Reports those rivers. */
    @Activate
    public RiverVerb(@Reference RecipeShelf shelf, @Reference Rivers rivers, @Reference CardText texts) {
        this.shelf = shelf;
        this.rivers = rivers;
        this.texts = texts;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("river", "what flows from what was bought to what is served, and what falls away", "ID")
                .with("--batch", "", "of a whole batch, not of one portion")
                .with("--pdf", "FILE", "draw it into a PDF file")
                .with("--sheet", "a4|letter", "the sheet it is drawn on; a4 if not said");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().size() != 1) {
            throw VerbException.wrongCall("Name one recipe: river ID.");
        }
        String id = call.arguments().get(0);
        Recipe recipe = shelf.graph().recipes().get(id);
        if (recipe == null) {
            throw VerbException.wrongCall("There is no recipe “" + id + "”; the verb recipes lists them all.");
        }
        River river = call.has("--batch") ? rivers.batch(recipe) : rivers.portion(recipe);
        Map<String, Object> json = json(river);
        List<String> lines = lines(river);
        if (call.has("--pdf")) {
            Path file = draw(river, call);
            json.put("file", file.toString());
            lines.add("Drawn into " + file + ".");
        }
        return new Report(river.unweighed().isEmpty() ? Outcome.DONE : Outcome.LOOK, json, lines);
    }

    private Path draw(River river, VerbCall call) throws VerbException {
        RiverPapers writer = papers.stream()
                .findFirst()
                .orElseThrow(() -> VerbException.wrongCall("The documents module is not running; start it first."));
        Path file = call.file(call.option("--pdf").orElseThrow());
        try {
            writer.printout(river, sheet(call)).pdf(file);
            return file;
        } catch (IOException failed) {
            throw VerbException.wrongCall("Cannot write " + file + ": " + failed.getMessage());
        }
    }

    private static Cards.Sheet sheet(VerbCall call) throws VerbException {
        String name = call.option("--sheet").orElse("a4");
        return switch (name.toLowerCase(Locale.ROOT)) {
            case "a4" -> Cards.Sheet.A4;
            case "letter" -> Cards.Sheet.LETTER;
            default -> throw VerbException.wrongCall("Sheets are a4 or letter, not " + name + ".");
        };
    }

    private static Map<String, Object> json(River river) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("recipe", river.recipe());
        json.put("name", river.name());
        json.put("gives", river.gives().toString());
        json.put("nodes", river.nodes().stream().map(RiverVerb::json).toList());
        json.put("links", river.links().stream().map(RiverVerb::json).toList());
        json.put("unweighed", river.unweighed().stream().map(RiverVerb::json).toList());
        json.put("remarks", river.remarks());
        return json;
    }

    private static Map<String, Object> json(River.Node node) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", node.id());
        json.put("kind", RecipeForm.word(node.kind()).replace('_', '-'));
        json.put("name", node.name());
        json.put("subject", node.subject());
        json.put("layer", node.layer());
        json.put("amount", node.amount().toString());
        return json;
    }

    private static Map<String, Object> json(River.Link link) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("from", link.from());
        json.put("to", link.to());
        json.put("what", link.what());
        json.put("amount", link.amount().toString());
        return json;
    }

    private static Map<String, Object> json(River.Unweighed unweighed) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("recipe", unweighed.recipe());
        json.put("line", unweighed.line());
        json.put("why", unweighed.why());
        return json;
    }

    private List<String> lines(River river) {
        List<String> lines = new ArrayList<>();
        lines.add(river.name() + ", " + texts.quantity(river.gives()));
        TextTable table = new TextTable("From", "To", ">Amount", "");
        for (River.Link link : river.links()) {
            River.Node from = river.node(link.from()).orElseThrow();
            River.Node to = river.node(link.to()).orElseThrow();
            table.row(
                    from.name(),
                    to.name(),
                    texts.quantity(link.amount()),
                    to.kind().inWords());
        }
        lines.addAll(table.lines());
        river.unweighed()
                .forEach(each -> lines.add("Not weighed: " + each.line() + " in " + each.recipe() + ". " + each.why()));
        lines.addAll(river.remarks());
        return lines;
    }
}
