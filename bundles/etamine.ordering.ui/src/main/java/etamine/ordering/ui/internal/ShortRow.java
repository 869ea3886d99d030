package etamine.ordering.ui.internal;

/**
 * Something the plan leaves short, expects to be binned, or could not take into account.
 *
 * @param kind short, waste or note
 * @param item the item's id; empty for a note
 * @param name the item's name
 * @param day the day in words
 * @param quantity how much
 * @param why the reasons
 */
record ShortRow(String kind, String item, String name, String day, String quantity, String why) {

    String key() {
        return kind + "/" + item + "/" + day + "/" + why;
    }
}
