package etamine.costing;

import etamine.measures.UnitPrice;
import java.time.LocalDate;

/**
 * A price and the day it came into force.
 *
 * @param from the first day it held
 * @param price per kg, l, piece or own word of the item
 * @param source the id of the price source
 * @param text where exactly it comes from
 */
public record DatedPrice(LocalDate from, UnitPrice price, String source, String text) {}
