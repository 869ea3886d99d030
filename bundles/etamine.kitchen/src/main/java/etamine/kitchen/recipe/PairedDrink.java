package etamine.kitchen.recipe;

/**
 * A drink chosen to go with a plate.
 *
 * @param recipe the drink's recipe
 * @param level its price level in the kitchen's words, such as {@code house}; empty when not said
 */
public record PairedDrink(String recipe, String level) {}
