package etamine.ingredients.internal;

import etamine.base.Problem;
import etamine.base.Severity;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.ingredients.IngredientList;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.storage.BookException;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** The ingredient list as documents on a shelf of the book. */
@Component
public final class ShelvedIngredients implements IngredientList {
    private static final int NAMED_USES = 10;

    private final IngredientShelf shelf;
    private volatile @Nullable Recipes recipes;

    /** The list on that shelf. */
    @Activate
    public ShelvedIngredients(@Reference IngredientShelf shelf) {
        this.shelf = shelf;
    }

    /** Learns who uses what. */
    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    public void setRecipes(Recipes found) {
        recipes = found;
    }

    /** Forgets who uses what. */
    public void unsetRecipes(Recipes gone) {
        if (recipes == gone) {
            recipes = null;
        }
    }

    @Override
    public Map<String, Ingredient> all() {
        return shelf.ingredients();
    }

    @Override
    public Optional<Ingredient> find(String id) {
        return Optional.ofNullable(shelf.ingredients().get(id));
    }

    @Override
    public long revision(String id) {
        return shelf.revision(id);
    }

    @Override
    public List<Problem> problems(Ingredient ingredient) {
        return IngredientRules.problems(ingredient);
    }

    @Override
    public Change save(Ingredient ingredient, long expected) {
        List<Problem> errors = problems(ingredient).stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .toList();
        if (!errors.isEmpty()) {
            return new Change.Refused(errors);
        }
        String label = ChangeLabel.of(find(ingredient.id()), ingredient);
        return new Change.Done(shelf.book().write(label, transaction -> shelf.save(transaction, ingredient, expected)));
    }

    @Override
    public Change remove(String id) {
        Optional<Ingredient> there = find(id);
        if (there.isEmpty()) {
            throw new BookException(BookException.Reason.MISSING, "There is no ingredient “" + id + "” any more.");
        }
        String name = there.get().item().name();
        List<Recipe> uses = usedIn(id);
        if (!uses.isEmpty() && !madeElsewhere(id)) {
            return new Change.Refused(
                    List.of(Problem.error("in-use", IngredientShelf.NAME + "/" + id, inUse(name, uses))));
        }
        long revision = revision(id);
        shelf.book().write("Remove " + name, transaction -> {
            transaction.remove(IngredientShelf.NAME, id, revision);
            return revision;
        });
        return new Change.Done(0);
    }

    private boolean madeElsewhere(String id) {
        Recipes known = recipes;
        return known != null && known.maker(id).isPresent();
    }

    private static String inUse(String name, List<Recipe> uses) {
        String named = uses.stream().limit(NAMED_USES).map(Recipe::name).collect(Collectors.joining(", "));
        String more = uses.size() > NAMED_USES ? " and " + (uses.size() - NAMED_USES) + " more" : "";
        return name + " is used in " + named + more + ". Take it out of there first.";
    }

    @Override
    public List<Recipe> usedIn(String id) {
        Recipes known = recipes;
        return known == null ? List.of() : known.usersOf(id);
    }

    @Override
    public String freshId(String name) {
        String plain = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        String base = plain.isEmpty() ? "ingredient" : plain.substring(0, Math.min(60, plain.length()));
        String id = base;
        for (int i = 2; shelf.revision(id) > 0 || shelf.unreadable().containsKey(id); i++) {
            id = base + "-" + i;
        }
        return id;
    }
}
