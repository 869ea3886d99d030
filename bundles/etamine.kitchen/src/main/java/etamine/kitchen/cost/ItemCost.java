package etamine.kitchen.cost;

import etamine.measures.UnitPrice;

/**
 * The cost of an item.
 *
 * @param item the item
 * @param price per unit of its count dimension
 * @param complete false when a price below it is missing, so that it is a lower bound
 * @param source where it comes from, in words
 */
public record ItemCost(String item, UnitPrice price, boolean complete, String source) {}
