package etamine.ordering.ui.internal;

/**
 * A line of the order shown.
 *
 * @param order the order's number
 * @param code the article number
 * @param item the item's id
 * @param name the item's name
 * @param packs how many packs
 * @param pack what a pack holds
 * @param price what a pack costs
 * @param amount what the line comes to
 * @param why the first reason
 */
record LineRow(
        String order,
        String code,
        String item,
        String name,
        long packs,
        String pack,
        String price,
        String amount,
        String why) {

    String packsText() {
        return String.valueOf(packs);
    }
}
