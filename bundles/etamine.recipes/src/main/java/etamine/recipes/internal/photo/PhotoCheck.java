package etamine.recipes.internal.photo;

import etamine.base.Problem;
import etamine.base.Severity;
import etamine.kitchen.check.BookCheck;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.recipes.internal.NamedPhotos;
import etamine.storage.Book;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Whether every photo is named by a recipe and every photo named is there; only their names are read. */
@Component
public final class PhotoCheck implements BookCheck {
    private final Book book;
    private final Recipes recipes;

    /** Checks the recipes of that book. */
    @Activate
    public PhotoCheck(@Reference Book book, @Reference Recipes recipes) {
        this.book = book;
        this.recipes = recipes;
    }

    @Override
    public List<Problem> check() {
        Set<String> unused = new TreeSet<>(book.shelf(NamedPhotos.SHELF).ids());
        Set<String> there = Set.copyOf(unused);
        Map<String, Recipe> all = recipes.all();
        List<Problem> problems = new ArrayList<>();
        all.values()
                .forEach(recipe -> recipe.photo().ifPresent(id -> {
                    unused.remove(id);
                    if (!there.contains(id)) {
                        problems.add(
                                problem("no-photo", "recipes/" + recipe.id(), NamedPhotos.missing(recipe.name(), id)));
                    }
                }));
        unused.forEach(id -> problems.add(problem(
                "unused-photo",
                NamedPhotos.SHELF + "/" + id,
                "No recipe has the photo “" + id + "”; load a recipe that names it, or leave it, it does no harm.")));
        return problems;
    }

    private static Problem problem(String code, String where, String text) {
        return new Problem(code, Severity.WARNING, where, text);
    }
}
