package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import java.util.Optional;
import org.eclipse.swt.widgets.Control;

/** One page of the bench, about the selected recipe. Called on the window's thread. */
interface RecipePage {

    /** Its one control. */
    Control control();

    /** Shows the recipe as it is now, keeping what is being typed; empty when none is selected. */
    void show(Optional<Recipe> recipe);

    /** Puts the keyboard where work starts. */
    void focus();
}
