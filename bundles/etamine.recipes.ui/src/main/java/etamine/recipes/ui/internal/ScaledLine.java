package etamine.recipes.ui.internal;

/**
 * One line of a scaled recipe.
 *
 * @param place its place
 * @param part whether it is used or made
 * @param exact how much, exactly
 * @param measured what a cook would measure; the exact amount is what counts
 * @param off how far that is off, where it is
 * @param item what
 * @param as the preparation
 * @param basis before or after trimming
 */
record ScaledLine(
        int place, String part, String exact, String measured, String off, String item, String as, String basis) {

    String key() {
        return Integer.toString(place);
    }

    /** The item with its preparation. */
    String named() {
        return as.isEmpty() ? item : item + ", " + as;
    }
}
