package etamine.ingredients.ui.internal;

/**
 * One item in the list.
 *
 * @param id its id
 * @param name its name
 * @param group its heading
 * @param price the written price; empty when there is none
 * @param storage where it is kept
 * @param allergens what is known of its allergens, in words
 * @param allergensKnown whether both lists are established
 * @param uses in how many recipes it is used
 * @param origin whether it is bought or made here
 */
record IngredientRow(
        String id,
        String name,
        String group,
        String price,
        String storage,
        String allergens,
        boolean allergensKnown,
        int uses,
        Origin origin) {

    /** Where an item comes from. */
    enum Origin {
        /** On the ingredient list. */
        LISTED,
        /** Made by a recipe, and not on the list. */
        MADE
    }

    boolean made() {
        return origin == Origin.MADE;
    }

    String usesText() {
        return uses == 0 ? "" : Integer.toString(uses);
    }
}
