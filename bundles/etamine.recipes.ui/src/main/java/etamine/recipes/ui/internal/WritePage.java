package etamine.recipes.ui.internal;

import etamine.kitchen.item.Allergens;
import etamine.kitchen.recipe.Recipe;
import etamine.widgets.FormPane;
import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** One recipe to write, each part saved when it is left. */
final class WritePage implements RecipePage {
    private final Desk desk;
    private final FormPane form;
    private final FormFields fields;
    private final HeadSection head;
    private final PhotoSection photo;
    private final UsesSection uses;
    private final MakesSection makes;
    private final StepsSection steps;
    private final MenuSection menu;

    WritePage(Composite parent, Desk desk) {
        this.desk = desk;
        form = new FormPane(parent);
        fields = new FormFields(form, desk);
        head = new HeadSection(form, fields, desk, this::jump);
        photo = new PhotoSection(form, desk);
        uses = new UsesSection(form, desk);
        makes = new MakesSection(form, fields, desk);
        steps = new StepsSection(form, desk);
        menu = new MenuSection(form, fields, desk);
        fields.area(Field.NOTES);
        form.remark(Allergens.CAUTION);
        form.setVisible(false);
    }

    @Override
    public Control control() {
        return form;
    }

    @Override
    public void show(Optional<Recipe> selected) {
        form.setVisible(selected.isPresent());
        selected.ifPresent(recipe -> form.update(() -> show(recipe)));
    }

    private void show(Recipe recipe) {
        fields.show(recipe);
        head.show(recipe);
        photo.show(recipe);
        uses.show(recipe);
        makes.show(recipe);
        steps.show(recipe);
        menu.show(recipe);
        desk.check(recipe, this::checked);
        line().ifPresent(line -> desk.frame().explain(desk.story().line(recipe, line)));
    }

    private void checked(Checked checked) {
        if (!form.isDisposed()) {
            form.update(() -> {
                head.checked(checked);
                makes.checked(checked);
            });
        }
    }

    /** The line used that the keyboard is in; the slate speaks of it. */
    OptionalInt line() {
        return uses.line();
    }

    /** Goes where a pointer points. */
    private void jump(String pointer) {
        String[] parts = pointer.split("/");
        String part = parts.length > 1 ? parts[1] : "";
        int row = parts.length > 2 && parts[2].matches("[0-9]{1,9}") ? Integer.parseInt(parts[2]) : 0;
        switch (part) {
            case "uses" -> uses.focusUse(row);
            case "makes" -> makes.focusRow(row);
            case "steps" -> steps.focusRow(row);
            case "drinks" -> menu.focusDrink(row);
            default -> fields.focus(part);
        }
    }

    @Override
    public void focus() {
        uses.focusEnd();
    }
}
