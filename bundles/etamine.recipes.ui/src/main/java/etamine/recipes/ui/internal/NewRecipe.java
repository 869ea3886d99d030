package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Kind;
import etamine.widgets.FormDialog;
import etamine.widgets.FormPane;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks what a new recipe is called and what it is for. */
final class NewRecipe {
    private final Shell parent;
    private final List<Text> names = new ArrayList<>();
    private final List<Combo> kinds = new ArrayList<>();
    private Optional<Wish> wish = Optional.empty();

    /**
     * What was asked for.
     *
     * @param name its name
     * @param kind what it is for
     */
    record Wish(String name, Kind kind) {}

    NewRecipe(Shell parent) {
        this.parent = parent;
    }

    Optional<Wish> ask() {
        new FormDialog(parent, "Add a recipe", this::fill)
                .button("Add")
                .check(() -> nameProblem(names.get(0).getText().strip()))
                .onAccept(() -> wish = Optional.of(new Wish(
                        names.get(0).getText().strip(),
                        KindText.read(kinds.get(0).getText()))))
                .ask();
        return wish;
    }

    private void fill(FormPane form) {
        names.add(form.line("Name", "field:new-name"));
        Combo kind = form.pick("Kind", "field:new-kind", false);
        kind.setItems(Stream.of(Kind.values()).map(KindText::of).toArray(String[]::new));
        kind.select(0);
        kinds.add(kind);
    }

    static Optional<String> nameProblem(String name) {
        return name.isEmpty() ? Optional.of("Give the recipe a name.") : Optional.empty();
    }
}
