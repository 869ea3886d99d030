package etamine.recipes.internal.trial;

import etamine.base.Problem;
import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Standing;
import etamine.recipes.Change;
import etamine.recipes.MeasuredYield;
import etamine.recipes.Trials;
import etamine.recipes.Trust;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.RecipeView;
import etamine.recipes.internal.Standards;
import etamine.recipes.internal.book.ShelvedRecipes;
import etamine.recipes.internal.rule.LinkRules;
import etamine.recipes.internal.weight.BatchWeights;
import etamine.recipes.internal.weight.MeasuredShares;
import etamine.storage.BookException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Tries and tests kept in the recipe's own document. */
@Component
public final class MeasuredTrials implements Trials {
    private final ShelvedRecipes recipes;
    private final RecipeShelf shelf;
    private final RecipeView view;

    /** The tests of the recipes on that shelf. */
    @Activate
    public MeasuredTrials(
            @Reference ShelvedRecipes recipes,
            @Reference RecipeShelf shelf,
            @Reference KnownItems known,
            @Reference MadeItems made) {
        this.recipes = recipes;
        this.shelf = shelf;
        this.view = new RecipeView(shelf, known, made);
    }

    @Override
    public Trust trust(Recipe recipe) {
        return Standards.of(recipe, view.beside(recipe).items());
    }

    @Override
    public Change tried(String id) {
        Recipe recipe = known(id);
        Standing more = recipe.standing().withTested(recipe.tested() + 1);
        return write(recipe.withStanding(more), "Count one more good try of " + recipe.name());
    }

    @Override
    public Change record(String id, BatchTest test) {
        Recipe recipe = known(id);
        List<String> wrong = LinkRules.wrong(recipe, test, view.beside(recipe).items());
        if (!wrong.isEmpty()) {
            return refused(id, wrong);
        }
        List<BatchTest> tests = new ArrayList<>(recipe.standing().tests());
        tests.add(test.withAccepted(false));
        tests.sort(Comparator.comparing(BatchTest::date));
        Standing more = recipe.standing().withTests(tests);
        return write(recipe.withStanding(more), "Record a test of " + recipe.name());
    }

    @Override
    public Change forget(String id, int test) {
        Recipe recipe = known(id);
        List<BatchTest> tests = new ArrayList<>(recipe.standing().tests());
        if (test < 0 || test >= tests.size()) {
            return refused(id, List.of(recipe.name() + " has " + tests.size() + " tests; name one of them."));
        }
        tests.remove(test);
        return write(recipe.withStanding(recipe.standing().withTests(tests)), "Take out a test of " + recipe.name());
    }

    @Override
    public List<MeasuredYield> measured(Recipe recipe) {
        return new MeasuredShares(recipe, view.beside(recipe).items())
                .over(recipe.standing().tests());
    }

    @Override
    public Change accept(String id, List<Integer> chosen) {
        Recipe recipe = known(id);
        List<BatchTest> tests = recipe.standing().tests();
        Set<Integer> places = new TreeSet<>(
                chosen.isEmpty() ? IntStream.range(0, tests.size()).boxed().toList() : chosen);
        if (places.isEmpty() || places.stream().anyMatch(place -> place < 0 || place >= tests.size())) {
            return refused(
                    id,
                    List.of(recipe.name() + " has " + tests.size() + " tests; record one, or name those to accept."));
        }
        List<MeasuredYield> yields = new MeasuredShares(
                        recipe, view.beside(recipe).items())
                .over(places.stream().map(tests::get).toList());
        List<String> unknown = unknown(recipe, yields);
        if (!unknown.isEmpty()) {
            return refused(id, unknown);
        }
        Recipe accepted = recipe.withMakes(working(recipe, yields))
                .withStanding(recipe.standing().withTests(marked(tests, places)));
        List<Problem> senseless = recipes.senseless(accepted);
        return senseless.isEmpty()
                ? write(accepted, "Accept the measured yield of " + recipe.name())
                : new Change.Refused(senseless);
    }

    private List<String> unknown(Recipe recipe, List<MeasuredYield> yields) {
        if (yields.stream().allMatch(each -> each.measured().isEmpty())) {
            return List.of("These tests weighed nothing that " + recipe.name() + " makes; record what came out.");
        }
        List<String> unknown = new ArrayList<>();
        if (yields.stream()
                .anyMatch(each -> each.measured().isPresent() && each.working().isEmpty())) {
            unknown.add("What goes into a batch of " + recipe.name() + " cannot be weighed.");
            unknown.addAll(BatchWeights.of(recipe, view.beside(recipe).items()).unweighed());
        }
        return unknown;
    }

    private static List<Make> working(Recipe recipe, List<MeasuredYield> yields) {
        return IntStream.range(0, yields.size())
                .mapToObj(i -> yields.get(i)
                        .working()
                        .map(working -> recipe.makes().get(i).withQuantity(working))
                        .orElse(recipe.makes().get(i)))
                .toList();
    }

    private static List<BatchTest> marked(List<BatchTest> tests, Set<Integer> accepted) {
        return IntStream.range(0, tests.size())
                .mapToObj(i -> tests.get(i).withAccepted(accepted.contains(i)))
                .toList();
    }

    private Change write(Recipe recipe, String label) {
        return recipes.written(recipe, recipes.revision(recipe.id()), label);
    }

    private static Change refused(String id, List<String> texts) {
        return new Change.Refused(texts.stream()
                .map(text -> Problem.error("batch-test", RecipeShelf.NAME + "/" + id, text))
                .toList());
    }

    private Recipe known(String id) {
        Recipe recipe = shelf.graph().recipes().get(id);
        if (recipe == null) {
            throw new BookException(BookException.Reason.MISSING, "There is no recipe “" + id + "” any more.");
        }
        return recipe;
    }
}
