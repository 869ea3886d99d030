package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.widgets.FormPane;
import etamine.widgets.SavedField;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.widgets.Text;

/** The single lines of the form, each saved when it is left. */
final class FormFields {
    private static final int NOTE_LINES = 3;
    private static final Set<Field> NEED_PRICE =
            Set.of(Field.TAX, Field.Q_PERCENT, Field.Q_AMOUNT, Field.PACKAGING, Field.TARGET);
    private static final Map<String, Field> POINTERS = Map.of(
            "name", Field.NAME,
            "portion", Field.PORTION,
            "keeps", Field.KEEPS,
            "tested", Field.TESTED,
            "absorbs", Field.ABSORBS,
            "reducesTo", Field.REDUCES_TO,
            "menuPrice", Field.MENU_PRICE,
            "station", Field.STATION);

    private final FormPane form;
    private final Desk desk;
    private final Map<Field, Text> texts = new EnumMap<>(Field.class);
    private final Map<Field, SavedField> saved = new EnumMap<>(Field.class);

    FormFields(FormPane form, Desk desk) {
        this.form = form;
        this.desk = desk;
    }

    static String id(Field field) {
        return "field:" + field.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    void wide(Field field) {
        keep(field, form.text(field.label(), id(field)));
    }

    void small(Field field) {
        keep(field, form.small(field.label(), id(field)));
    }

    void area(Field field) {
        keep(field, form.area(field.label(), id(field), NOTE_LINES));
    }

    private void keep(Field field, Text text) {
        text.setMessage(field.hint());
        texts.put(field, text);
        saved.put(field, new SavedField(form, text, (about, typed) -> save(about, field, typed)));
    }

    private Optional<String> save(String about, Field field, String typed) {
        boolean priced = desk.model().find(about).flatMap(Recipe::menu).isPresent();
        if (NEED_PRICE.contains(field) && !priced && !typed.isBlank()) {
            return Optional.of("Write the menu price first.");
        }
        return attempt(about, FieldText.read(field, typed));
    }

    /** Saves what was understood; answers what to do about what was not. */
    Optional<String> attempt(String about, Attempt attempt) {
        if (attempt instanceof Attempt.Edit understood) {
            desk.edit(about, understood.edit());
            return Optional.empty();
        }
        return Optional.of(((Attempt.Bad) attempt).sentence());
    }

    void show(Recipe recipe) {
        saved.forEach((field, each) -> each.show(recipe.id(), FieldText.of(recipe, field)));
    }

    /** Goes to the field of a member of the entry, if there is one. */
    void focus(String member) {
        Optional.ofNullable(POINTERS.get(member)).map(texts::get).ifPresent(Text::setFocus);
    }
}
