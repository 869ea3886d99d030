package etamine.recipes.internal.text;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.RecipeSearch;
import etamine.recipes.RecipeSearch.Hit;
import etamine.recipes.RecipeSearch.Wanted;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.form.RecipeForm;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists recipes on the console: {@code recipes [TEXT]}. */
@Component
public final class RecipesVerb implements Verb {
    private final RecipeShelf shelf;
    private final RecipeSearch search;
    private final CardText cards;

    /** Lists that shelf. */
    @Activate
    public RecipesVerb(@Reference RecipeShelf shelf, @Reference RecipeSearch search, @Reference CardText cards) {
        this.shelf = shelf;
        this.search = search;
        this.cards = cards;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("recipes", "list recipes that have TEXT in name, ingredients or steps", "[TEXT...]")
                .with("--kind", "KIND", "component, plate, breakdown or drink")
                .with("--contains", "ALLERGENS", "that contain or may contain all of these, with commas between")
                .with("--free", "ALLERGENS", "known to contain none of these; what is unknown is left out")
                .with("--cost", "AMOUNT", "of which a portion costs no more than that")
                .with("--station", "NAME", "made there")
                .with("--untested", "", "not made yet")
                .with("--archived", "", "those put away");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        List<Hit> hits = new ArrayList<>(search.find(wanted(call)));
        if (call.arguments().isEmpty()) {
            hits.sort(Comparator.comparing(Hit::recipe));
        }
        List<Map<String, Object>> json = new ArrayList<>();
        TextTable table = new TextTable("id", "name", "kind", ">makes", ">portion", ">lines", "");
        for (Hit hit : hits) {
            Recipe recipe = shelf.graph().recipes().get(hit.recipe());
            if (recipe != null) {
                json.add(json(recipe));
                row(table, recipe, hit.excerpt());
            }
        }
        return Report.done(Map.of("recipes", json), json.isEmpty() ? List.of("No recipe fits.") : table.lines());
    }

    private static Wanted wanted(VerbCall call) throws VerbException {
        return new Wanted(
                String.join(" ", call.arguments()),
                kinds(call),
                words(call, "--contains"),
                words(call, "--free"),
                cost(call),
                call.option("--station").orElse(""),
                call.has("--untested"),
                call.has("--archived"),
                Integer.MAX_VALUE);
    }

    private static Set<Kind> kinds(VerbCall call) throws VerbException {
        Optional<String> word = call.option("--kind");
        if (word.isEmpty()) {
            return Set.of();
        }
        return Set.of(Stream.of(Kind.values())
                .filter(kind -> RecipeForm.word(kind).equals(word.get()))
                .findFirst()
                .orElseThrow(() -> VerbException.wrongCall(
                        "“" + word.get() + "” is no kind of recipe; use component, plate, breakdown or drink.")));
    }

    private static Set<String> words(VerbCall call, String option) {
        return call.option(option).stream()
                .flatMap(list -> Stream.of(list.split(",")))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toSet());
    }

    private static Optional<BigDecimal> cost(VerbCall call) throws VerbException {
        Optional<String> text = call.option("--cost");
        if (text.filter(amount -> !amount.matches("[0-9]{1,9}(\\.[0-9]{1,4})?")).isPresent()) {
            throw VerbException.wrongCall("Write the cost as digits and a point, such as --cost 4.50.");
        }
        return text.map(BigDecimal::new);
    }

    private void row(TextTable table, Recipe recipe, String excerpt) {
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
                Integer.toString(recipe.uses().size()),
                excerpt);
    }

    private static Map<String, Object> json(Recipe recipe) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", recipe.id());
        json.put("name", recipe.name());
        json.put("kind", RecipeForm.word(recipe.kind()));
        json.put("tested", recipe.tested());
        json.put("archived", recipe.standing().archived());
        recipe.portion().ifPresent(portion -> json.put("portion", portion.toString()));
        json.putAll(CardText.json(recipe));
        return json;
    }
}
