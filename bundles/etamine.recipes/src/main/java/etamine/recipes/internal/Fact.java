package etamine.recipes.internal;

import etamine.kitchen.allergen.Allergen;

/** Something true of a thing as soon as it is true of anything in it. */
public sealed interface Fact {

    /** It contains an allergen. */
    record Contains(Allergen allergen) implements Fact {}

    /** It may contain an allergen. */
    record MayContain(Allergen allergen) implements Fact {}

    /** It does not suit a diet. */
    record Unsuited(String diet) implements Fact {}

    /** Nobody has said whether it suits a diet. */
    record Undecided(String diet) implements Fact {}

    /** Nobody has established its allergens. */
    record Unestablished() implements Fact {}
}
