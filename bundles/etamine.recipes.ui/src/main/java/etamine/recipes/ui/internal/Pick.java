package etamine.recipes.ui.internal;

import etamine.widgets.Choice;
import etamine.widgets.FormPane;
import java.util.List;
import org.eclipse.swt.widgets.Combo;

/**
 * One of a few fixed choices in a form.
 *
 * @param combo what shows them
 * @param choices what there is to choose
 */
record Pick(Combo combo, List<Choice> choices) {

    /** A pick that begins with the first choice. */
    static Pick in(FormPane form, String label, String id, List<Choice> choices) {
        return in(form, label, id, false, choices);
    }

    /** The same across the form, for choices with long names. */
    static Pick wide(FormPane form, String label, String id, List<Choice> choices) {
        return in(form, label, id, true, choices);
    }

    private static Pick in(FormPane form, String label, String id, boolean wide, List<Choice> choices) {
        Combo combo = form.pick(label, id, wide);
        combo.setItems(choices.stream().map(Choice::label).toArray(String[]::new));
        combo.select(0);
        return new Pick(combo, choices);
    }

    void choose(String id) {
        for (int i = 0; i < choices.size(); i++) {
            if (choices.get(i).id().equals(id)) {
                combo.select(i);
            }
        }
    }

    String id() {
        return choices.get(combo.getSelectionIndex()).id();
    }
}
