package etamine.recipes.ui.internal;

import java.time.LocalDate;

/**
 * One weighed test.
 *
 * @param place its place among the recipe's tests
 * @param date the day
 * @param by who weighed
 * @param in what went in
 * @param out what came out, with shares
 * @param accepted whether the working yield stands on it
 * @param note what was special about it
 */
record TestRow(int place, LocalDate date, String by, String in, String out, boolean accepted, String note) {

    String key() {
        return Integer.toString(place);
    }

    String standing() {
        return accepted ? "stands on it" : "";
    }
}
