package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import etamine.kitchen.item.Allergens;
import etamine.widgets.EditGrid;
import etamine.widgets.FormPane;
import etamine.widgets.GridColumn;
import etamine.widgets.SavedField;
import etamine.widgets.Spoken;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

/** What is known of allergens and of ways of eating, in three states each. */
final class AllergensPage implements Page {
    private final FormPane form;
    private final IngredientsModel model;
    private final Saving saving;
    private final EditGrid allergens;
    private final EditGrid diets;
    private final Button known;
    private final SavedField sulphites;
    private String shown = "";

    AllergensPage(Composite parent, IngredientsModel model, Saving saving) {
        this.model = model;
        this.saving = saving;
        form = new FormPane(parent);
        form.remark(Allergens.CAUTION);
        known = form.wide(cell -> Spoken.id(new Button(cell, SWT.CHECK), "field:allergens-known"));
        known.setText("All is written here: what is not marked below is not in it");
        known.addListener(
                SWT.Selection, event -> saving.save().accept(shown, AllergenText.known(known.getSelection())));
        Text amount = form.text(Field.SULPHITES.label(), FactsPage.id(Field.SULPHITES));
        amount.setMessage("not measured");
        sulphites = new SavedField(
                form, amount, (about, typed) -> saving.attempt(about, FieldText.read(Field.SULPHITES, typed)));
        allergens = form.wide(cell -> new EditGrid(cell, "grid:allergens", allergenColumns(), this::saveAllergen));
        form.heading("Ways of eating");
        diets = form.wide(cell -> new EditGrid(cell, "grid:diets", dietColumns(), this::saveDiet));
    }

    private static List<GridColumn> allergenColumns() {
        return List.of(
                GridColumn.entry("allergen", 4).completing(AllergenText::words),
                GridColumn.entry("contains or not", 4)
                        .completing(typed -> AllergenText.starting(typed, AllergenText.STATES.stream())),
                GridColumn.entry("which species, nut or cereal", 5).completing(AllergenText::names));
    }

    private static List<GridColumn> dietColumns() {
        return List.of(
                GridColumn.entry("way of eating", 4),
                GridColumn.entry("suits or not", 4)
                        .completing(typed -> AllergenText.starting(typed, DietText.STATES.stream())));
    }

    private Optional<String> saveAllergen(String about, int row, List<String> cells) {
        return attempt(about, now -> AllergenText.row(now.item().allergens(), row, cells));
    }

    private Optional<String> saveDiet(String about, int row, List<String> cells) {
        return attempt(about, now -> DietText.row(now.item().diet(), row, cells));
    }

    private Optional<String> attempt(String about, Function<Ingredient, Attempt> reading) {
        return model.find(about).map(reading).flatMap(attempt -> saving.attempt(about, attempt));
    }

    @Override
    public void show(Ingredient ingredient) {
        shown = ingredient.id();
        known.setSelection(ingredient.item().allergens().known());
        allergens.show(shown, AllergenText.rows(ingredient.item().allergens()));
        sulphites.show(shown, FieldText.of(ingredient, Field.SULPHITES));
        diets.show(shown, DietText.rows(ingredient.item().diet()));
        form.reflow();
    }

    @Override
    public Control control() {
        return form;
    }
}
