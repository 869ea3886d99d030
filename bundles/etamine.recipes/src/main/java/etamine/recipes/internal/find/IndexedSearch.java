package etamine.recipes.internal.find;

import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Money;
import etamine.recipes.AllergenRollUp;
import etamine.recipes.RecipeSearch;
import etamine.recipes.Rolled;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.RecipeShelf;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Finds recipes in texts that are gathered anew only for recipes that have changed. */
@Component
public final class IndexedSearch implements RecipeSearch {
    private final RecipeShelf shelf;
    private final KnownItems known;
    private final MadeItems made;
    private final AllergenRollUp allergens;
    private volatile @Nullable Costs costs;
    private volatile RecipeTexts latest = RecipeTexts.NONE;

    /** Finds on that shelf. */
    @Activate
    public IndexedSearch(
            @Reference RecipeShelf shelf,
            @Reference KnownItems known,
            @Reference MadeItems made,
            @Reference AllergenRollUp allergens) {
        this.shelf = shelf;
        this.known = known;
        this.made = made;
        this.allergens = allergens;
    }

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    void bindCosts(Costs found) {
        costs = found;
    }

    void unbindCosts(Costs gone) {
        if (costs == gone) {
            costs = null;
        }
    }

    private record Found(RecipeTexts.Text text, RecipeTexts.Match match) {}

    @Override
    public List<Hit> find(Wanted wanted) {
        List<String> words = RecipeTexts.words(wanted.text());
        Map<String, Rolled> rolled =
                wanted.contains().isEmpty() && wanted.free().isEmpty() ? Map.of() : allergens.recipes();
        return texts().all().values().stream()
                .filter(text -> isWanted(text.recipe(), wanted))
                .flatMap(text -> text.match(words).stream().map(match -> new Found(text, match)))
                .filter(found -> fits(found.text.recipe(), wanted, rolled))
                .sorted(Comparator.comparingInt((Found found) -> found.match.rank())
                        .thenComparing(found -> found.text.name()))
                .limit(Math.max(0, wanted.atMost()))
                .map(found -> new Hit(
                        found.text.recipe().id(),
                        found.text.recipe().name(),
                        found.match.place(),
                        found.text.excerpt(found.match)))
                .toList();
    }

    private static boolean isWanted(Recipe recipe, Wanted wanted) {
        return recipe.standing().archived() == wanted.archived()
                && (wanted.kinds().isEmpty() || wanted.kinds().contains(recipe.kind()))
                && (!wanted.untested() || recipe.tested() == 0)
                && (wanted.station().isBlank()
                        || isMadeAt(recipe, wanted.station().strip()));
    }

    private static boolean isMadeAt(Recipe recipe, String station) {
        return stations(recipe).anyMatch(station::equalsIgnoreCase);
    }

    private static Stream<String> stations(Recipe recipe) {
        return Stream.concat(
                        Stream.of(recipe.making().station()),
                        recipe.steps().stream().map(step -> step.station()))
                .map(String::strip)
                .filter(station -> !station.isEmpty());
    }

    private boolean fits(Recipe recipe, Wanted wanted, Map<String, Rolled> rolled) {
        Optional<Rolled> facts = Optional.ofNullable(rolled.get(recipe.id()));
        boolean contains = wanted.contains().stream()
                .allMatch(word -> facts.filter(each ->
                                AllergenWords.has(each.contains(), word) || AllergenWords.has(each.mayContain(), word))
                        .isPresent());
        boolean free = wanted.free().stream()
                .allMatch(word -> facts.filter(each -> each.known()
                                && !AllergenWords.has(each.contains(), word)
                                && !AllergenWords.has(each.mayContain(), word))
                        .isPresent());
        return contains
                && free
                && wanted.costAtMost()
                        .filter(most -> !costsAtMost(recipe, most))
                        .isEmpty();
    }

    private boolean costsAtMost(Recipe recipe, BigDecimal most) {
        Costs known = costs;
        Optional<RecipeCost> cost = known == null ? Optional.empty() : known.recipe(recipe.id());
        return cost.filter(each -> each.missing().isEmpty())
                .map(each -> each.portion().orElse(each.batch()))
                .map(Money::amount)
                .filter(amount -> amount.compareTo(most) <= 0)
                .isPresent();
    }

    private RecipeTexts texts() {
        RecipeTexts now =
                latest.of(shelf.graph(), known.items().map(items -> items.all()).orElseGet(made::items));
        latest = now;
        return now;
    }

    @Override
    public List<String> stations() {
        TreeSet<String> all = new TreeSet<>(Comparator.comparing((String each) -> each.toLowerCase(Locale.ROOT)));
        shelf.graph().recipes().values().forEach(recipe -> stations(recipe).forEach(all::add));
        return List.copyOf(all);
    }
}
