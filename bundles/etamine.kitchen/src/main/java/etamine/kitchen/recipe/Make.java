package etamine.kitchen.recipe;

import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.util.Optional;

/**
 * One thing a recipe gives.
 *
 * @param item the item made
 * @param quantity how much one batch gives
 * @param credit the value it takes out of the batch's cost; without one it shares what remains by weight
 */
public record Make(String item, Quantity quantity, Optional<UnitPrice> credit) {}
