package etamine.recipes.ui.internal;

/**
 * One revision.
 *
 * @param number which
 * @param when when it was written, in the house's time
 * @param label what was done then
 */
record RevisionRow(long number, String when, String label) {

    String key() {
        return Long.toString(number);
    }
}
