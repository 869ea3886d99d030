package etamine.recipes.ui.internal;

import etamine.recipes.FoundRecipes;
import etamine.recipes.FoundRecipes.Found;
import etamine.recipes.FoundRecipes.Line;
import etamine.recipes.FoundRecipes.Presence;
import etamine.recipes.FoundRecipes.State;
import etamine.recipes.RecipeFiles.Taken;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What was found in a file and what of it is to be taken over. */
final class ImportModel {
    private final FoundRecipes found;
    private boolean newIngredients;
    private boolean gaps;

    /**
     * One line of the report.
     *
     * @param id unique among them
     * @param recipe the recipe's name
     * @param text what stands in the file; empty for a remark about the recipe
     * @param state how well it was understood, in words
     * @param remark what to do about it
     * @param doubtful whether somebody should look at it
     */
    record Row(String id, String recipe, String text, String state, String remark, boolean doubtful) {}

    ImportModel(FoundRecipes found) {
        this.found = found;
    }

    FoundRecipes found() {
        return found;
    }

    boolean newIngredients() {
        return newIngredients;
    }

    void newIngredients(boolean add) {
        newIngredients = add;
    }

    /** Whether recipes are taken of which not everything is understood. */
    void gaps(boolean allow) {
        gaps = allow;
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (Found recipe : found.recipes()) {
            String name = recipe.recipe().name();
            rows.add(new Row(recipe.number() + "", name, "", presence(recipe), "", false));
            for (Line line : recipe.lines()) {
                boolean doubtful = line.state() != State.CLEAR;
                String id = recipe.number() + "/" + rows.size();
                rows.add(new Row(id, "", line.text(), line.state().inWords(), line.remark(), doubtful));
            }
            for (String remark : recipe.remarks()) {
                rows.add(new Row(recipe.number() + "/" + rows.size(), "", "", "remark", remark, true));
            }
        }
        return rows;
    }

    private static String presence(Found recipe) {
        return switch (recipe.presence()) {
            case NEW -> "new recipe";
            case CHANGES -> "changes the book's";
            case SAME -> "in the book already";
        };
    }

    /** The numbers of the recipes that would be taken over. */
    Set<Integer> chosen() {
        return found.recipes().stream()
                .filter(recipe -> recipe.presence() != Presence.SAME && (gaps || recipe.complete(newIngredients)))
                .map(Found::number)
                .collect(Collectors.toSet());
    }

    /** How many ingredients of the file the book does not have. */
    int unknownIngredients() {
        return (int) found.recipes().stream()
                .flatMap(recipe -> recipe.lines().stream())
                .flatMap(line -> line.fresh().stream())
                .distinct()
                .count();
    }

    /** What would happen now, in a sentence. */
    String outlook() {
        int all = found.recipes().size();
        int taken = chosen().size();
        String problems = found.problems().isEmpty() ? "" : " " + String.join(" ", found.problems());
        return taken + " of " + all + (all == 1 ? " recipe" : " recipes") + " would be taken over." + problems;
    }

    /** Why nothing can be taken over now. */
    Optional<String> problem() {
        if (!chosen().isEmpty()) {
            return Optional.empty();
        }
        boolean same = found.recipes().stream().allMatch(recipe -> recipe.presence() == Presence.SAME);
        return Optional.of(
                same
                        ? "The book has all of them already; cancel."
                        : "No recipe is wholly understood; allow new ingredients, or gaps, or cancel.");
    }

    /** What was taken over, in a sentence. */
    static String sentence(Taken taken) {
        int recipes = taken.recipes().size();
        int ingredients = taken.ingredients().size();
        return recipes + (recipes == 1 ? " recipe" : " recipes") + " taken over"
                + (ingredients == 0
                        ? "; undo takes it back."
                        : ", with " + ingredients + (ingredients == 1 ? " new ingredient" : " new ingredients")
                                + " whose price and allergens are unknown; undo takes it back.");
    }
}
