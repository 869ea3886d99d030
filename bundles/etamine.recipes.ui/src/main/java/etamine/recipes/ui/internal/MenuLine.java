package etamine.recipes.ui.internal;

import etamine.recipes.AllergenState;
import java.util.Map;

/**
 * A plate or drink of the menu before one list.
 *
 * @param id the recipe
 * @param name its name
 * @param kind plate or drink
 * @param states by the group's identifier
 * @param others what it has that is not on the list, in words
 */
record MenuLine(String id, String name, String kind, Map<String, AllergenState> states, String others) {

    AllergenState state(String group) {
        return states.getOrDefault(group, AllergenState.UNKNOWN);
    }
}
