package etamine.costing.internal.history;

import etamine.costing.internal.engine.PortionSize;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One recipe put together from versions of it. What makes portions takes the amounts of its lines and the number of its
 * portions from the version of portions; anything else takes what a batch gives from the version of yields. A batch that
 * only became larger or smaller as a whole is no change of yield.
 */
final class RecipeMix {
    private RecipeMix() {}

    /** The recipe of {@code base} with yields and portions of the others; the very base when nothing differs. */
    static Recipe of(Recipe base, Recipe yields, Recipe portions) {
        if (base == yields && base == portions) {
            return base;
        }
        Recipe mixed = base;
        if (base != portions) {
            mixed = mixed.withPortion(portions.portion());
        }
        if (PortionSize.makesPortions(base)) {
            mixed = PortionSize.makesPortions(portions) && base != portions ? helped(mixed, portions) : mixed;
        } else if (base != yields && !PortionSize.makesPortions(yields)) {
            mixed = mixed.withMakes(makes(base.makes(), yields.makes(), size(yields, base)));
        }
        return mixed.equals(base) ? base : mixed;
    }

    /** What a portion holds as in the other version; lines the other does not have keep their amount per portion. */
    private static Recipe helped(Recipe base, Recipe other) {
        Ratio size =
                other.makes().get(0).quantity().dividedBy(base.makes().get(0).quantity());
        List<Use> uses = new ArrayList<>();
        for (int i = 0; i < base.uses().size(); i++) {
            Use own = base.uses().get(i);
            uses.add(own.withQuantity(match(base, i, other)
                    .map(Use::quantity)
                    .orElseGet(() -> own.quantity().times(size))));
        }
        return base.withUses(uses).withMakes(makes(base.makes(), other.makes(), Ratio.ONE));
    }

    /** The line of the other version that is the same thing in the same way, counted among its equals. */
    static Optional<Use> match(Recipe base, int index, Recipe other) {
        Use own = base.uses().get(index);
        long before = base.uses().subList(0, index).stream()
                .filter(use -> alike(use, own))
                .count();
        return other.uses().stream().filter(use -> alike(use, own)).skip(before).findFirst();
    }

    private static boolean alike(Use one, Use two) {
        return one.item().equals(two.item()) && one.as().equals(two.as()) && one.basis() == two.basis();
    }

    private static List<Make> makes(List<Make> base, List<Make> other, Ratio size) {
        return base.stream()
                .map(own -> other.stream()
                        .filter(make -> make.item().equals(own.item())
                                && make.quantity().unit().isLike(own.quantity().unit()))
                        .findFirst()
                        .map(make -> own.withQuantity(make.quantity().times(size)))
                        .orElse(own))
                .toList();
    }

    /** By what all lines of a recipe were multiplied to become those of another; 1 where that is not so. */
    static Ratio size(Recipe from, Recipe to) {
        if (from.uses().size() != to.uses().size() || from.uses().isEmpty()) {
            return Ratio.ONE;
        }
        Optional<Ratio> common = Optional.empty();
        for (int i = 0; i < from.uses().size(); i++) {
            Optional<Ratio> factor = factor(from.uses().get(i), to.uses().get(i));
            if (factor.isEmpty() || common.isPresent() && !common.equals(factor)) {
                return Ratio.ONE;
            }
            common = factor;
        }
        return common.orElse(Ratio.ONE);
    }

    private static Optional<Ratio> factor(Use from, Use to) {
        Quantity before = from.quantity();
        Quantity after = to.quantity();
        return alike(from, to) && before.unit().isLike(after.unit()) && before.signum() > 0
                ? Optional.of(after.dividedBy(before))
                : Optional.empty();
    }
}
