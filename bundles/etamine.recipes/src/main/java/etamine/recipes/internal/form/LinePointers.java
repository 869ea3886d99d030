package etamine.recipes.internal.form;

import etamine.kitchen.recipe.Recipe;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where the lines of a recipe stand in its document.
 *
 * @param uses a JSON pointer for each line used
 * @param makes a JSON pointer for each thing made
 */
public record LinePointers(List<String> uses, List<String> makes) {

    public LinePointers {
        uses = List.copyOf(uses);
        makes = List.copyOf(makes);
    }

    /** The pointers of a recipe of which every line was read. */
    public static LinePointers of(Recipe recipe) {
        return new LinePointers(
                counted("/uses/", recipe.uses().size()),
                counted("/makes/", recipe.makes().size()));
    }

    private static List<String> counted(String prefix, int lines) {
        return IntStream.range(0, lines).mapToObj(i -> prefix + i).toList();
    }
}
