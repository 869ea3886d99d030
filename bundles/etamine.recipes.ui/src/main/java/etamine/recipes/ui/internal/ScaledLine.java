package etamine.recipes.ui.internal;

/**
 * One line of a scaled recipe.
 *
 * @param place its place
 * @param part whether it is used or made
 * @param quantity how much
 * @param item what
 * @param as the preparation
 * @param basis before or after trimming
 */
record ScaledLine(int place, String part, String quantity, String item, String as, String basis) {

    String key() {
        return Integer.toString(place);
    }
}
