package etamine.kitchen.order;

import etamine.measures.Money;
import etamine.measures.Pack;
import java.util.List;

/**
 * One line of an order.
 *
 * @param item the item
 * @param code the supplier's article number
 * @param packs how many packs
 * @param pack what one pack holds
 * @param packPrice what one pack costs at that number, without tax; for goods sold by weight an estimate
 * @param amount packs times pack price, rounded to the currency
 * @param why the reasons for it, a sentence each
 */
public record OrderLine(
        String item, String code, long packs, Pack pack, Money packPrice, Money amount, List<String> why) {

    /** Copies the list. */
    public OrderLine {
        why = List.copyOf(why);
    }
}
