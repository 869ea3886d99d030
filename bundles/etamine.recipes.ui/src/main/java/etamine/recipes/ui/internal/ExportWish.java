package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.widgets.Choice;
import etamine.widgets.FormDialog;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Shell;

/**
 * Which recipes are to be exported.
 *
 * @param ids their ids; none for all
 * @param name a name for the file
 */
record ExportWish(List<String> ids, String name) {
    private static final String ALL = "";

    ExportWish {
        ids = List.copyOf(ids);
    }

    /** Asks for one or all; all, without asking, when none is selected. */
    static Optional<ExportWish> ask(Shell parent, Optional<Recipe> selected) {
        if (selected.isEmpty()) {
            return Optional.of(all());
        }
        Recipe recipe = selected.get();
        List<Pick> fields = new ArrayList<>();
        List<ExportWish> wish = new ArrayList<>();
        new FormDialog(parent, "Export recipes", form -> {
                    form.remark("The file follows schema.org/Recipe (JSON-LD), so that other programs can read it, and "
                            + "holds all that this book knows of the recipe besides.");
                    fields.add(Pick.in(form, "Which", "field:export-which", choices(recipe)));
                })
                .button("Choose a file\u2026")
                .onAccept(() -> wish.add(
                        fields.get(0).id().equals(ALL) ? all() : new ExportWish(List.of(recipe.id()), recipe.name())))
                .ask();
        return wish.stream().findFirst();
    }

    static List<Choice> choices(Recipe recipe) {
        return List.of(new Choice(recipe.id(), recipe.name()), new Choice(ALL, "All recipes that are not archived"));
    }

    private static ExportWish all() {
        return new ExportWish(List.of(), "recipes");
    }
}
