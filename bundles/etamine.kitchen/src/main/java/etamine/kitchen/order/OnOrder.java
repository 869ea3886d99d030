package etamine.kitchen.order;

import etamine.measures.Quantity;
import java.time.LocalDate;

/**
 * Something on its way.
 *
 * @param supplier who brings it
 * @param item the item
 * @param packs how many packs
 * @param quantity how much that is, in the item's count dimension
 * @param deliver the day it should come
 */
public record OnOrder(String supplier, String item, long packs, Quantity quantity, LocalDate deliver) {}
