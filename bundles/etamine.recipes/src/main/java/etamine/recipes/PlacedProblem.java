package etamine.recipes;

import etamine.base.Problem;

/**
 * A problem of a recipe with its place in it.
 *
 * @param pointer a JSON pointer into the recipe's entry, such as {@code /uses/3/quantity}
 * @param problem what is wrong or doubtful
 */
public record PlacedProblem(String pointer, Problem problem) {}
