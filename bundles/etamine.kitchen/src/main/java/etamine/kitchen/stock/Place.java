package etamine.kitchen.stock;

/**
 * Somewhere things are kept.
 *
 * @param id its identifier
 * @param name what people call it
 * @param order its place in the walk round the kitchen
 */
public record Place(String id, String name, int order) {}
