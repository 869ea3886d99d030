package etamine.recipes.ui.internal;

import etamine.base.Explanation;
import etamine.widgets.Tone;

/**
 * One line of the allergens or diets of a recipe.
 *
 * @param place its place in the order of the list
 * @param what the group, allergen or diet
 * @param state how the recipe stands to it, in words, with the names
 * @param ask what has to be named, settled or measured
 * @param why the nearest reason, as the way to it
 * @param tone how the state should be seen
 * @param story all reasons, for the slate
 */
record AllergenLine(int place, String what, String state, String ask, String why, Tone tone, Explanation story) {}
