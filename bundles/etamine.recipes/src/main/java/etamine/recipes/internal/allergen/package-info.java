/** Allergens and diets of recipes and items, rolled up, with the ways they come in. */
@NullMarked
package etamine.recipes.internal.allergen;

import org.jspecify.annotations.NullMarked;
