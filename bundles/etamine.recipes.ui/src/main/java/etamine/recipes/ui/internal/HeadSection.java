package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.widgets.FormPane;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

/** What a recipe is, how far it is to be trusted, and what is wrong with it. */
final class HeadSection {
    private final FormPane form;
    private final Desk desk;
    private final Combo kind;
    private final Label standing;
    private final Link problems;
    private final Consumer<String> jump;
    private List<String> pointers = List.of();
    private String shown = "";

    HeadSection(FormPane form, FormFields fields, Desk desk, Consumer<String> jump) {
        this.form = form;
        this.desk = desk;
        this.jump = jump;
        problems = form.wide(cell -> Spoken.id(new Link(cell, SWT.WRAP), "problems"));
        problems.setForeground(Palette.of(form).text(Tone.WARN));
        problems.addListener(SWT.Selection, event -> follow(event.text));
        fields.wide(Field.NAME);
        kind = form.pick("Kind", "field:kind", false);
        kind.setItems(Stream.of(Kind.values()).map(KindText::of).toArray(String[]::new));
        kind.addListener(SWT.Selection, event -> kindPicked());
        List.of(Field.STATION, Field.PORTION, Field.KEEPS, Field.TESTED).forEach(fields::small);
        standing = form.remark("");
        Spoken.id(standing, "standing");
    }

    private void kindPicked() {
        Kind picked = KindText.read(kind.getText());
        desk.edit(shown, recipe -> recipe.withKind(picked));
    }

    void show(Recipe recipe) {
        shown = recipe.id();
        kind.setText(KindText.of(recipe.kind()));
    }

    void checked(Checked checked) {
        if (!checked.recipe().equals(shown)) {
            return;
        }
        pointers = checked.pointers();
        form.say(standing, checked.standing());
        String text = checked.links();
        problems.setText(text);
        problems.getParent().setVisible(!text.isEmpty());
    }

    private void follow(String link) {
        int at = link.matches("[0-9]{1,4}") ? Integer.parseInt(link) : pointers.size();
        if (at < pointers.size()) {
            jump.accept(pointers.get(at));
        }
    }
}
