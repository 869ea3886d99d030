package etamine.recipes.ui.internal;

/**
 * One thing that differs.
 *
 * @param place its place in the list
 * @param what how it differs
 * @param where what it concerns
 * @param before as it was
 * @param after as it is
 */
record DifferenceRow(int place, String what, String where, String before, String after) {

    String key() {
        return Integer.toString(place);
    }
}
