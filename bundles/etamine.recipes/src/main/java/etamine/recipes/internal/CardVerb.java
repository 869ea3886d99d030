package etamine.recipes.internal;

import etamine.base.Problem;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.RecipeBook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows one recipe as a card on the console: {@code recipe ID}. */
@Component
public final class CardVerb implements Verb {
    private final RecipeShelf shelf;
    private final RecipeBook book;
    private final CardText cards;

    /** Shows recipes of that shelf. */
    @Activate
    public CardVerb(@Reference RecipeShelf shelf, @Reference RecipeBook book, @Reference CardText cards) {
        this.shelf = shelf;
        this.book = book;
        this.cards = cards;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("recipe", "one recipe as a card", "ID");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().size() != 1) {
            throw VerbException.wrongCall("Name one recipe: recipe ID.");
        }
        String id = call.arguments().get(0);
        Recipe recipe = shelf.graph().recipes().get(id);
        if (recipe == null) {
            throw VerbException.wrongCall("There is no recipe “" + id + "”; the verb recipes lists them all.");
        }
        List<Problem> problems = book.problems(recipe);
        List<String> lines = new ArrayList<>(cards.card(recipe));
        problems.forEach(problem -> lines.add("! " + problem.text()));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("recipe", RecipeForm.plain(recipe));
        json.put("problems", problems.stream().map(CardVerb::json).toList());
        return new Report(problems.isEmpty() ? Outcome.DONE : Outcome.LOOK, json, lines);
    }

    private static Map<String, Object> json(Problem problem) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("code", problem.code());
        json.put("severity", RecipeForm.word(problem.severity()));
        json.put("where", problem.where());
        json.put("text", problem.text());
        return json;
    }
}
