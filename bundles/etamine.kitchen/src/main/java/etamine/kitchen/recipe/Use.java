package etamine.kitchen.recipe;

import etamine.measures.Quantity;
import java.util.Optional;

/**
 * One line of what a recipe takes.
 *
 * @param item the item
 * @param quantity how much, on the stated basis
 * @param as the preparation; empty when used as it is
 * @param basis before or after trimming
 */
public record Use(String item, Quantity quantity, Optional<String> as, Basis basis) {}
