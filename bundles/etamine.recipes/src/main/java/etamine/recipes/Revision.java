package etamine.recipes;

import etamine.kitchen.recipe.Recipe;
import java.time.Instant;
import java.util.Optional;

/**
 * A recipe as it was at one time.
 *
 * @param number 1 for the first
 * @param at when it was written
 * @param label what was done then
 * @param removed whether it was removed then
 * @param recipe how it was; empty when it was removed or cannot be read any more
 */
public record Revision(long number, Instant at, String label, boolean removed, Optional<Recipe> recipe) {}
