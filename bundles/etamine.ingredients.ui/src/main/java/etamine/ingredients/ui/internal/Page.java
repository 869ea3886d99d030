package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import org.eclipse.swt.widgets.Control;

/** One page of what is known of an ingredient. */
interface Page {

    /** Shows an ingredient, keeping what is being typed about the same one. */
    void show(Ingredient ingredient);

    /** Its one control. */
    Control control();
}
