package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import etamine.widgets.FormPane;
import etamine.widgets.Palette;
import etamine.widgets.SavedField;
import etamine.widgets.Tone;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Name, group, price, storage, and what is wrong or doubtful. */
final class FactsPage implements Page {
    private static final int NOTE_LINES = 3;

    private final FormPane form;
    private final IngredientsModel model;
    private final Saving saving;
    private final Label problems;
    private final Map<Field, SavedField> fields = new EnumMap<>(Field.class);
    private final Text name;
    private final Text group;

    FactsPage(Composite parent, IngredientsModel model, Saving saving) {
        this.model = model;
        this.saving = saving;
        form = new FormPane(parent);
        problems = form.wide(cell -> new Label(cell, SWT.WRAP));
        problems.setForeground(Palette.of(form).text(Tone.WARN));
        name = field(Field.NAME, form.text(Field.NAME.label(), id(Field.NAME)));
        group = line(Field.GROUP, "Vegetables");
        line(Field.PRICE, "2.10 / kg");
        line(Field.COUNT_IN, "kg");
        line(Field.STORAGE, "chilled");
        line(Field.KEEPS, "10");
        form.remark("How long it keeps is the kitchen's own figure, never a safety limit; local codes decide.");
        field(Field.NOTE, form.area(Field.NOTE.label(), id(Field.NOTE), NOTE_LINES));
    }

    private Text line(Field field, String example) {
        Text text = field(field, form.text(field.label(), id(field)));
        text.setMessage(example);
        return text;
    }

    private Text field(Field field, Text text) {
        fields.put(
                field,
                new SavedField(form, text, (about, typed) -> saving.attempt(about, FieldText.read(field, typed))));
        return text;
    }

    static String id(Field field) {
        return "field:" + field.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public void show(Ingredient ingredient) {
        fields.forEach((field, saved) -> saved.show(ingredient.id(), FieldText.of(ingredient, field)));
        List<String> sentences = model.problems(ingredient.id());
        problems.setText(String.join("\n", sentences));
        problems.setVisible(!sentences.isEmpty());
        ((GridData) problems.getLayoutData()).exclude = sentences.isEmpty();
        form.reflow();
    }

    void focusName() {
        name.setFocus();
        name.selectAll();
    }

    void focusGroup() {
        group.setFocus();
        group.selectAll();
    }

    @Override
    public Control control() {
        return form;
    }
}
