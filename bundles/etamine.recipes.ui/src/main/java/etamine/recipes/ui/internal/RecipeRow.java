package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Kind;

/**
 * One recipe in the list.
 *
 * @param id its id
 * @param name its name
 * @param kind what it is for
 */
record RecipeRow(String id, String name, Kind kind) {

    String kindText() {
        return KindText.of(kind);
    }
}
