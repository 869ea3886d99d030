package etamine.recipes.internal.book;

import etamine.base.Problem;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.RecipeWriter;
import etamine.kitchen.recipe.Standing;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.recipes.Change;
import etamine.recipes.PlacedProblem;
import etamine.recipes.RecipeBook;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.NamedPhotos;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.RecipeView;
import etamine.recipes.internal.form.LinePointers;
import etamine.recipes.internal.rule.Finding;
import etamine.recipes.internal.rule.RecipeRules;
import etamine.storage.BookException;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The recipes as documents on a shelf of the book. */
@Component(service = {RecipeBook.class, RecipeWriter.class, ShelvedRecipes.class})
public final class ShelvedRecipes implements RecipeBook, RecipeWriter {
    private static final int NAMED_USES = 10;

    private final RecipeShelf shelf;
    private final KnownItems known;
    private final MadeItems made;
    private final RecipeView view;
    private final NamedPhotos photos;

    /** The recipes on that shelf. */
    @Activate
    public ShelvedRecipes(@Reference RecipeShelf shelf, @Reference KnownItems known, @Reference MadeItems made) {
        this.shelf = shelf;
        this.known = known;
        this.made = made;
        this.view = new RecipeView(shelf, known, made);
        this.photos = new NamedPhotos(shelf);
    }

    @Override
    public long revision(String id) {
        return shelf.revision(id);
    }

    @Override
    public List<Problem> problems(Recipe recipe) {
        return placed(recipe).stream().map(PlacedProblem::problem).toList();
    }

    @Override
    public List<PlacedProblem> placed(Recipe recipe) {
        return findings(recipe).stream()
                .map(finding -> new PlacedProblem(finding.pointer(), finding.problem(recipe.id())))
                .toList();
    }

    private List<Finding> findings(Recipe recipe) {
        RecipeView.Beside beside = view.beside(recipe);
        return RecipeRules.of(recipe, beside.graph(), beside.items(), LinePointers.of(recipe));
    }

    @Override
    public Change save(Recipe recipe, long expected) {
        List<Problem> senseless = senseless(recipe);
        if (!senseless.isEmpty()) {
            return new Change.Refused(senseless);
        }
        return written(recipe, expected, ChangeLabel.of(find(recipe.id()), recipe));
    }

    /** Writes what was judged already. */
    public Change.Done written(Recipe recipe, long expected, String label) {
        return new Change.Done(
                recipe.id(), shelf.book().write(label, transaction -> write(transaction, recipe, expected)));
    }

    /** What keeps a recipe from being written. */
    public List<Problem> senseless(Recipe recipe) {
        return findings(recipe).stream()
                .filter(finding -> finding.grade() == Finding.Grade.SENSELESS)
                .map(finding -> finding.problem(recipe.id()))
                .toList();
    }

    @Override
    public void write(Transaction transaction, Recipe recipe) {
        String senseless = senseless(recipe).stream().map(Problem::text).collect(Collectors.joining(" "));
        if (!senseless.isEmpty()) {
            throw new IllegalArgumentException(recipe.name() + ": " + senseless);
        }
        write(transaction, recipe, Document.ANY);
    }

    private long write(Transaction transaction, Recipe recipe, long expected) {
        Optional<Document> stored = transaction.get(RecipeShelf.NAME, recipe.id());
        String json = stored.map(document -> shelf.form().rewrite(document.json(), recipe))
                .orElseGet(() -> shelf.form().write(recipe));
        photos.follow(transaction, recipe.id(), recipe.photo());
        return transaction.save(RecipeShelf.NAME, recipe.id(), expected, json);
    }

    @Override
    public Change remove(String id) {
        Recipe recipe = known(id);
        List<Recipe> users = usersOfWhatOnlyItMakes(recipe);
        if (!users.isEmpty()) {
            return new Change.Refused(
                    List.of(Problem.error("in-use", RecipeShelf.NAME + "/" + id, inUse(recipe, users))));
        }
        long revision = revision(id);
        shelf.book().write("Remove " + recipe.name(), transaction -> {
            transaction.remove(RecipeShelf.NAME, id, revision);
            photos.follow(transaction, id, Optional.empty());
            return revision;
        });
        return new Change.Done(id, 0);
    }

    private List<Recipe> usersOfWhatOnlyItMakes(Recipe recipe) {
        RecipeGraph graph = shelf.graph();
        Map<String, Item> listed = view.listed();
        return recipe.makes().stream()
                .map(Make::item)
                .filter(item -> graph.makersOf(item).size() == 1 && !listed.containsKey(item))
                .flatMap(item -> graph.usersOf(item).stream())
                .filter(user -> user != recipe)
                .distinct()
                .toList();
    }

    private static String inUse(Recipe recipe, List<Recipe> users) {
        String named = users.stream().limit(NAMED_USES).map(Recipe::name).collect(Collectors.joining(", "));
        String more = users.size() > NAMED_USES ? " and " + (users.size() - NAMED_USES) + " more" : "";
        return "What " + recipe.name() + " makes is used in " + named + more + ". Take it out of there first.";
    }

    @Override
    public Change copy(String id, String name) {
        Recipe original = known(id);
        String fresh = freshId(name);
        List<Make> makes = original.makes().stream()
                .map(make -> make.item().equals(id)
                        ? new Make(fresh, make.quantity(), make.credit(), make.marketValue())
                        : make)
                .toList();
        Recipe copy = original.withId(fresh).withName(name).withMakes(makes).withStanding(Standing.DRAFT);
        return save(copy, 0);
    }

    @Override
    public Change archive(String id, boolean archived) {
        Recipe recipe = known(id);
        if (recipe.standing().archived() == archived) {
            return new Change.Done(id, revision(id));
        }
        String label = (archived ? "Put away " : "Take out again ") + recipe.name();
        return written(recipe.withStanding(recipe.standing().withArchived(archived)), revision(id), label);
    }

    @Override
    public Recipe start(String name, Kind kind) {
        String id = freshId(name);
        Quantity gives =
                kind == Kind.PLATE || kind == Kind.DRINK ? Quantity.of(1, Unit.PORTION) : Quantity.of(1, Unit.KG);
        return new Recipe(
                id,
                name,
                kind,
                List.of(),
                List.of(new Make(id, gives, Optional.empty())),
                Optional.empty(),
                Optional.empty(),
                0,
                List.of(),
                Optional.empty(),
                "");
    }

    private Optional<Recipe> find(String id) {
        return Optional.ofNullable(shelf.graph().recipes().get(id));
    }

    private Recipe known(String id) {
        return find(id).orElseThrow(() ->
                new BookException(BookException.Reason.MISSING, "There is no recipe “" + id + "” any more."));
    }

    /** An identifier that neither a recipe nor an item has. */
    private String freshId(String name) {
        String plain = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        String base = plain.isEmpty() ? "recipe" : plain.substring(0, Math.min(60, plain.length()));
        ItemView items = ItemView.of(known, made);
        String id = base;
        for (int i = 2;
                find(id).isPresent()
                        || shelf.unreadable().containsKey(id)
                        || items.find(id).isPresent();
                i++) {
            id = base + "-" + i;
        }
        return id;
    }
}
