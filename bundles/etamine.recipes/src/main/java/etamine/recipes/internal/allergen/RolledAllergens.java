package etamine.recipes.internal.allergen;

import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.AllergenReasons;
import etamine.recipes.AllergenRollUp;
import etamine.recipes.Rolled;
import etamine.recipes.Suitability;
import etamine.recipes.Way;
import etamine.recipes.internal.Fact;
import etamine.recipes.internal.FactBits;
import etamine.recipes.internal.FactRoll;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.RolledFacts;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Answers from the roll-up that the made items are worked out with, so that there is one for the whole book. */
@Component
public final class RolledAllergens implements AllergenRollUp {
    private final KnownItems known;
    private final MadeItems made;
    private volatile Whole whole;

    private record Whole(FactRoll roll, SortedMap<String, Rolled> recipes) {}

    /** The roll-up of what these recipes make of these items. */
    @Activate
    public RolledAllergens(@Reference KnownItems known, @Reference MadeItems made) {
        this.known = known;
        this.made = made;
        this.whole = new Whole(FactRoll.of(RecipeGraph.of(Map.of()), Map.of()), new TreeMap<>());
    }

    @Override
    public Map<String, Rolled> recipes() {
        FactRoll roll = made.roll();
        Whole now = whole;
        if (now.roll != roll) {
            now = with(now, roll);
            whole = now;
        }
        return now.recipes;
    }

    /** Reads anew only the recipes that have changed or use something of which other facts are so. */
    private static Whole with(Whole before, FactRoll roll) {
        RecipeGraph graph = roll.graph();
        Set<String> changed = new HashSet<>(graph.changesFrom(before.roll.graph()));
        roll.changesFrom(before.roll).forEach(item -> graph.usersOf(item).forEach(user -> changed.add(user.id())));
        RolledFacts facts = new RolledFacts(roll.facts());
        SortedMap<String, Rolled> recipes = new TreeMap<>(before.recipes);
        for (String id : changed) {
            Recipe recipe = graph.recipes().get(id);
            if (recipe == null) {
                recipes.remove(id);
            } else {
                recipes.put(id, rolled(recipe, roll, facts));
            }
        }
        return new Whole(roll, Collections.unmodifiableSortedMap(recipes));
    }

    @Override
    public Rolled of(Recipe recipe) {
        FactRoll roll = made.roll();
        return rolled(recipe, roll, new RolledFacts(roll.facts()));
    }

    @Override
    public Optional<Rolled> item(String id) {
        FactRoll roll = made.roll();
        boolean isMade = !roll.graph().makersOf(id).isEmpty();
        return ItemView.of(known, made)
                .find(id)
                .map(item -> rolled(id, item.name(), isMade, new RolledFacts(roll.facts()).read(roll.of(id))));
    }

    @Override
    public AllergenReasons why(Recipe recipe) {
        FactRoll roll = made.roll();
        ItemView view = ItemView.of(known, made);
        return reasons(of(recipe), roll, bit -> new WaySearch(roll, view::name, bit).from(recipe));
    }

    @Override
    public Optional<AllergenReasons> whyItem(String id) {
        FactRoll roll = made.roll();
        ItemView view = ItemView.of(known, made);
        return item(id).map(rolled -> reasons(rolled, roll, bit -> new WaySearch(roll, view::name, bit).from(id)));
    }

    private static Rolled rolled(Recipe recipe, FactRoll roll, RolledFacts facts) {
        BitSet row = roll.of(recipe);
        return rolled(recipe.id(), recipe.name(), true, facts.read(row));
    }

    private static Rolled rolled(String id, String name, boolean isMade, RolledFacts.Read read) {
        return new Rolled(id, name, isMade, read.contains(), read.mayContain(), read.known(), read.diets());
    }

    private static AllergenReasons reasons(Rolled rolled, FactRoll roll, Function<Integer, List<Way>> ways) {
        FactBits facts = roll.facts();
        Map<Allergen, List<Way>> contained = new HashMap<>();
        rolled.contains().forEach(each -> contained.put(each, ways.apply(facts.find(new Fact.Contains(each)))));
        Map<Allergen, List<Way>> possible = new HashMap<>();
        rolled.mayContain().forEach(each -> possible.put(each, ways.apply(facts.find(new Fact.MayContain(each)))));
        Map<String, List<Way>> diets = new HashMap<>();
        rolled.diets().forEach((diet, verdict) -> {
            if (verdict != Suitability.SUITS) {
                Fact fact = verdict == Suitability.UNSUITED ? new Fact.Unsuited(diet) : new Fact.Undecided(diet);
                diets.put(diet, ways.apply(facts.find(fact)));
            }
        });
        List<Way> unknown = rolled.known() ? List.of() : ways.apply(facts.unestablished());
        return new AllergenReasons(rolled, contained, possible, unknown, diets);
    }
}
