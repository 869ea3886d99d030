package etamine.recipes;

import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.allergen.Declaration;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.allergen.Group;
import etamine.kitchen.allergen.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Works out one row of a sheet. */
final class SheetRow {
    static final Comparator<Allergen> BY_WORDS = Comparator.comparing(Allergen::inWords)
            .thenComparing(allergen ->
                    allergen.amount().map(amount -> amount.doubleValue()).orElse(-1.0));

    private final List<Allergen> contained = new ArrayList<>();
    private final List<Allergen> possible = new ArrayList<>();
    private final Set<String> asks = new LinkedHashSet<>();
    private boolean below;

    private SheetRow() {}

    static AllergenSheet.Row of(Rolled rolled, DeclarationList list, Group group) {
        SheetRow row = new SheetRow();
        row.take(rolled.contains(), list, group, row.contained);
        row.take(rolled.mayContain(), list, group, row.possible);
        AllergenState state = row.state(rolled);
        if (row.below && state == AllergenState.UNKNOWN && rolled.made()) {
            row.asks.add("Measure what is served: what goes in is not over the limit, but reducing concentrates it.");
        }
        return new AllergenSheet.Row(group, state, row.contained, row.possible, List.copyOf(row.asks));
    }

    private void take(Set<Allergen> allergens, DeclarationList list, Group group, List<Allergen> into) {
        allergens.stream().sorted(BY_WORDS).forEach(allergen -> {
            for (Declaration said : list.judge(allergen)) {
                if (said.group().id().equals(group.id())) {
                    note(said, allergen, into);
                }
            }
        });
    }

    private void note(Declaration said, Allergen allergen, List<Allergen> into) {
        said.ask().ifPresent(asks::add);
        if (said.standing() == Standing.OPEN) {
            asks.add("Whether this list wants " + allergen.inWords() + " is not settled here; ask your authority.");
        } else if (said.standing() == Standing.NATIONAL) {
            asks.add("Your country decides whether " + allergen.inWords() + " is declared.");
        }
        below |= !said.declared();
        if (said.declared()) {
            into.add(allergen);
        }
    }

    private AllergenState state(Rolled rolled) {
        if (!contained.isEmpty()) {
            return AllergenState.CONTAINS;
        }
        if (!possible.isEmpty()) {
            return AllergenState.MAY_CONTAIN;
        }
        if (!rolled.known() || below && rolled.made()) {
            return AllergenState.UNKNOWN;
        }
        return below ? AllergenState.BELOW : AllergenState.NONE;
    }
}
