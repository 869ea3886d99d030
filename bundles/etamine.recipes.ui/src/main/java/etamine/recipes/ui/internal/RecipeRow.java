package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Kind;

/**
 * One recipe in the list.
 *
 * @param id its id
 * @param name its name
 * @param kind what it is for
 * @param tested how often it was made with the same result
 * @param found where the words looked for were found, when not in the name; else empty
 */
record RecipeRow(String id, String name, Kind kind, int tested, String found) {

    /** The icon of its kind. */
    String icon() {
        return switch (kind) {
            case COMPONENT -> "component";
            case PLATE -> "plate";
            case BREAKDOWN -> "breakdown";
            case DRINK -> "drink";
        };
    }

    /** How often it was made; nothing for a draft. */
    String triesText() {
        return tested == 0 ? "" : tested + "\u00d7";
    }
}
