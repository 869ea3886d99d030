package etamine.recipes;

import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.allergen.Group;
import java.util.List;

/**
 * A recipe or item before one list. Show it with {@link etamine.kitchen.item.Allergens#CAUTION}.
 *
 * @param list by which
 * @param rows one for each group of the list, in its order
 * @param othersContained what is contained and not on this list
 * @param othersPossible what may be contained and is not on this list
 */
public record AllergenSheet(
        DeclarationList list, List<Row> rows, List<Allergen> othersContained, List<Allergen> othersPossible) {

    /** Copies the lists. */
    public AllergenSheet {
        rows = List.copyOf(rows);
        othersContained = List.copyOf(othersContained);
        othersPossible = List.copyOf(othersPossible);
    }

    /**
     * One group.
     *
     * @param group which
     * @param state how it stands
     * @param contained what of it is contained
     * @param possible what of it may be contained
     * @param asks what has to be named, settled or measured, as sentences
     */
    public record Row(
            Group group, AllergenState state, List<Allergen> contained, List<Allergen> possible, List<String> asks) {

        /** Copies the lists. */
        public Row {
            contained = List.copyOf(contained);
            possible = List.copyOf(possible);
            asks = List.copyOf(asks);
        }

        /** The cereals, nuts or species that are named, of what is contained or else of what may be. */
        public List<String> names() {
            return (state == AllergenState.MAY_CONTAIN ? possible : contained)
                    .stream()
                            .map(Allergen::name)
                            .filter(name -> !name.isEmpty())
                            .distinct()
                            .toList();
        }

        /** The state with its names: {@code contains hazelnut}. */
        public String inWords() {
            String named = String.join(", ", names());
            return named.isEmpty() ? state.inWords() : state.inWords() + " " + named;
        }
    }
}
