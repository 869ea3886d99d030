package etamine.recipes.internal;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.find.NameMatch;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists recipes on the console: {@code recipes [TEXT]}. */
@Component
public final class RecipesVerb implements Verb {
    private final RecipeShelf shelf;
    private final CardText cards;

    /** Lists that shelf. */
    @Activate
    public RecipesVerb(@Reference RecipeShelf shelf, @Reference CardText cards) {
        this.shelf = shelf;
        this.cards = cards;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("recipes", "list recipes, those that contain TEXT", "[TEXT...]");
    }

    @Override
    public Report run(VerbCall call) {
        NameMatch match = new NameMatch(String.join(" ", call.arguments()));
        List<Map<String, Object>> json = new ArrayList<>();
        TextTable table = new TextTable("id", "name", "kind", ">makes", ">portion", ">lines");
        for (Recipe recipe : shelf.graph().recipes().values()) {
            if (match.fits(recipe.name()) || match.fits(recipe.id())) {
                json.add(json(recipe));
                table.row(
                        recipe.id(),
                        recipe.name(),
                        RecipeForm.word(recipe.kind()),
                        recipe.makes().stream()
                                .findFirst()
                                .map(Make::quantity)
                                .map(cards::quantity)
                                .orElse(""),
                        recipe.portion().map(cards::quantity).orElse(""),
                        Integer.toString(recipe.uses().size()));
            }
        }
        return Report.done(Map.of("recipes", json), json.isEmpty() ? List.of("No recipe fits.") : table.lines());
    }

    private static Map<String, Object> json(Recipe recipe) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", recipe.id());
        json.put("name", recipe.name());
        json.put("kind", RecipeForm.word(recipe.kind()));
        json.put("tested", recipe.tested());
        recipe.portion().ifPresent(portion -> json.put("portion", portion.toString()));
        json.putAll(CardText.json(recipe));
        return json;
    }
}
