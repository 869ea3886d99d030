package etamine.kitchen.recipe;

/** Which weight a quantity in a recipe means. */
public enum Basis {
    /** As purchased: before trimming. */
    AP,
    /** Edible portion: after trimming. */
    EP
}
