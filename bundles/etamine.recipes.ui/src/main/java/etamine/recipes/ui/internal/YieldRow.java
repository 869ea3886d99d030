package etamine.recipes.ui.internal;

/**
 * What tests say of one thing made.
 *
 * @param item the thing
 * @param name its name
 * @param written its share of what goes in, as written
 * @param mean its mean share over the tests
 * @param spread the standard deviation, or the range of two
 * @param tests how many weighed it
 * @param working what a batch would give
 */
record YieldRow(String item, String name, String written, String mean, String spread, String tests, String working) {}
