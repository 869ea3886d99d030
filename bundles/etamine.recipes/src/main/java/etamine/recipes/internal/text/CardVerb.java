package etamine.recipes.internal.text;

import etamine.base.Problem;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.RecipeBook;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.form.RecipeForm;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows one recipe on the console, copies it or puts it away: {@code recipe ID}. */
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
        return VerbUsage.of("recipe", "one recipe, or a change of it as a whole", "ID")
                .with("--copy", "NAME", "add a copy under that name")
                .with("--archive", "", "put it away: lists leave it out, what uses it still finds it")
                .with("--unarchive", "", "take it out again");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        Recipe recipe = recipe(shelf, call);
        if (call.option("--copy").isPresent()) {
            String name = call.option("--copy").get();
            return ChangeReport.of(
                    book.copy(recipe.id(), name), "Added " + name + ", a copy of " + recipe.name() + ".");
        }
        if (call.has("--archive")) {
            return ChangeReport.of(book.archive(recipe.id(), true), "Put away " + recipe.name() + ".");
        }
        if (call.has("--unarchive")) {
            return ChangeReport.of(book.archive(recipe.id(), false), "Took out again " + recipe.name() + ".");
        }
        return card(recipe);
    }

    /** The recipe that a call names. */
    public static Recipe recipe(RecipeShelf shelf, VerbCall call) throws VerbException {
        if (call.arguments().size() != 1) {
            throw VerbException.wrongCall("Name one recipe by its id.");
        }
        String id = call.arguments().get(0);
        Recipe recipe = shelf.graph().recipes().get(id);
        if (recipe == null) {
            throw VerbException.wrongCall("There is no recipe “" + id + "”; the verb recipes lists them all.");
        }
        return recipe;
    }

    private Report card(Recipe recipe) {
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
