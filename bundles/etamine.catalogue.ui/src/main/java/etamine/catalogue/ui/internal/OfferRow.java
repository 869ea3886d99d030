package etamine.catalogue.ui.internal;

import java.math.BigDecimal;

/**
 * One line of the offers of a supplier.
 *
 * @param id the offer
 * @param item its item's name
 * @param code the article number
 * @param pack what a pack holds
 * @param price the price with what it is for
 * @param unitPrice the price per count unit, in words
 * @param sortBy the same for sorting
 * @param from since when, and whether that is over or to come, in words
 * @param current whether the price holds today
 * @param doubtful whether something about it should be looked at
 */
record OfferRow(
        String id,
        String item,
        String code,
        String pack,
        String price,
        String unitPrice,
        BigDecimal sortBy,
        String from,
        boolean current,
        boolean doubtful) {}
